import { describe, expect, it } from 'vitest';
import { glassAngular } from '../../../lib/glazing/index.ts';
import { compileOpening, diffuseView } from '../../../lib/opening/index.ts';
import { buildFacadeYear, buildSkyYear } from '../../../lib/sky/index.ts';
import { bareGain } from '../../../lib/study/bareGain.ts';
import { glassLight } from '../../../lib/study/glassLight.ts';
import { buildSunYear } from '../../../lib/sun/index.ts';
import { HOURS, buildCalendar } from '../../../lib/time/index.ts';
import { glazings } from '../../../src/library/index.ts';
import { exampleYear } from './support.ts';

const sides = (depth: number) => ({ head: depth, sill: depth, left: depth, right: depth });

/** A deep window under an overhang: what shades most sharply within an hour. */
const geometry = {
  width: 1.2,
  height: 1.5,
  frame: sides(0.1),
  setBack: 0.25,
  reveal: sides(0.25),
  revealReflectance: 0.5,
  overhang: { projection: 0.6, aboveHead: 0.1, left: 0.3, right: 0.3 },
};

/** Light on the glass and gain on eight facades with the sun placed so many times an hour. */
function facades(stepsPerHour: number) {
  const year = exampleYear('albuquerque');
  const calendar = buildCalendar('Etc/GMT+7', 2026, year.startUtc);
  const sun = buildSunYear(year, 2026, year.startUtc, { stepsPerHour });
  const sky = buildSkyYear(sun, year, { albedo: 0.2, month: calendar.month });
  const glass = glassAngular(glazings.find((g) => g.id === 'triple-low-e')!);
  const shade = compileOpening(geometry);
  return [0, 45, 90, 135, 180, 225, 270, 315].map((azimuth) => {
    const plane = { azimuth, tilt: 90 };
    const facade = buildFacadeYear(sun, sky, plane, { sky: 0.5, ground: 0.5, horizon: 1 });
    const light = glassLight(facade, shade, diffuseView(geometry, plane));
    return bareGain(facade, sky, light, glass);
  });
}

describe('four steps an hour against sixty', () => {
  const coarse = facades(4);
  const fine = facades(60);

  it.each(['sunlit', 'gain'] as const)('%s of the year within 0.5 percent', (quantity) => {
    coarse.forEach((facade, i) => {
      const sum = (values: Float64Array) => values.reduce((total, w) => total + w, 0);
      expect(Math.abs(sum(facade[quantity]) / sum(fine[i][quantity]) - 1)).toBeLessThan(0.005);
    });
  });

  // Only the hours of sunrise and sunset differ by more: there a quarter hour is coarse for where
  // the sun comes over the horizon. They are few, and the gain they bring is small.
  it.each(['sunlit', 'gain'] as const)(
    '%s of all but 1 hour in 2,000 within 10 W/m2',
    (quantity) => {
      let over = 0;
      let worst = 0;
      coarse.forEach((facade, i) => {
        for (let hour = 0; hour < HOURS; hour++) {
          const gap = Math.abs(facade[quantity][hour] - fine[i][quantity][hour]);
          worst = Math.max(worst, gap);
          if (gap > 10) over++;
        }
      });
      expect(over).toBeLessThan((8 * HOURS) / 2000);
      expect(worst).toBeLessThan(30);
    },
  );
});
