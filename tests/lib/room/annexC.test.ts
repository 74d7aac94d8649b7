import { expect, it } from 'vitest';
import { compileRoom, createRoom, type Room } from '../../../lib/room/index.ts';
import { HOURS } from '../../../lib/time/index.ts';
import { calendar } from './agreement.ts';
import { buildUps, opening, studio, uValue, windowArea, windowU } from './rooms.ts';
import { syntheticWeather } from './syntheticWeather.ts';

it('the five-resistance room follows EN ISO 13790:2008, annex C, equation by equation', () => {
  const people = { weekday: Array(24).fill(140), weekend: Array(24).fill(60) };
  const room: Room = {
    ...studio('medium'),
    mass: { kind: 'class', class: 'medium' },
    people,
    heating: undefined,
  };
  const weather = syntheticWeather();
  const stepping = createRoom(
    compileRoom(room, [opening], calendar, { groundTemperature: 10, kind: 'fiveResistance' }),
  );
  stepping.reset(20);

  // Clause numbers of the standard. Af 38 m2, medium: Cm = 165 kJ/m2K, Am = 2.5 Af, At = 4.5 Af.
  const At = 4.5 * 38;
  const Am = 2.5 * 38;
  const Cm = 165_000 * 38;
  const Htris = 3.45 * At;
  const Htrms = 9.1 * Am;
  const Htrw = windowArea * windowU;
  const Hop = buildUps.medium
    .filter((w) => !w.inside)
    .reduce((sum, w) => sum + w.area * uValue(w), 0);
  const Htrem = 1 / (1 / Hop - 1 / Htrms);
  const Hve = (1200 / 3600) * 38 * 2.6 * (0.04 + 0.35 * 0.2);
  const H1 = 1 / (1 / Hve + 1 / Htris); // C.6
  const H2 = H1 + Htrw; // C.7
  const H3 = 1 / (1 / H2 + 1 / Htrms); // C.8
  let massBefore = 20;
  let worst = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const outdoor = weather.outdoor[hour];
    const sun = weather.sun[hour];
    const weekend = calendar.weekday[calendar.day[hour * 4]] >= 6;
    const internal = (weekend ? 60 : 140) + 100;
    const toAir = 0.5 * internal; // C.1
    const toMass = (Am / At) * (0.5 * internal + sun); // C.2
    const toSurface = (1 - Am / At - Htrw / (9.1 * At)) * (0.5 * internal + sun); // C.3
    const total =
      toMass +
      Htrem * outdoor +
      (H3 * (toSurface + Htrw * outdoor + H1 * (toAir / Hve + outdoor))) / H2; // C.5
    const massAfter =
      (massBefore * (Cm / 3600 - 0.5 * (H3 + Htrem)) + total) / (Cm / 3600 + 0.5 * (H3 + Htrem)); // C.4
    const mass = (massAfter + massBefore) / 2; // C.9
    const surface =
      (Htrms * mass + toSurface + Htrw * outdoor + H1 * (outdoor + toAir / Hve)) /
      (Htrms + Htrw + H1); // C.10
    const air = (Htris * surface + Hve * outdoor + toAir) / (Htris + Hve); // C.11
    massBefore = massAfter;

    const step = stepping.step(hour, {
      sun,
      outdoor,
      wind: 0,
      opaqueSun: 0,
      flowFactor: new Float64Array([1]),
    });
    worst = Math.max(
      worst,
      Math.abs(step.mass - mass),
      Math.abs(step.air - air),
      Math.abs(step.operative - (0.3 * air + 0.7 * surface)), // C.12
    );
  }
  // The same algebra in another order: rounding only.
  expect(worst).toBeLessThan(1e-8);
});
