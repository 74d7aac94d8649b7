import fc from 'fast-check';
import type { ProjectInput } from '../../../lib/project/index.ts';
import { shippedLibrary } from './library.ts';
import { clock, date, figure, list, maybe, months, share, text, title } from './randomValues.ts';
import { room } from './randomRoom.ts';

/** Zones with a longitude in them: half hours, quarter hours, both sides of the date line, the poles. */
export const PLACES: [string, number, number][] = [
  ['America/New_York', 44.47, -73.15],
  ['Asia/Kathmandu', 27.7, 85.3],
  ['Australia/Adelaide', -34.9, 138.6],
  ['Pacific/Chatham', -43.95, -176.55],
  ['Pacific/Fiji', -16.8, 180],
  ['Pacific/Fiji', -16.8, -180],
  ['Arctic/Longyearbyen', 78.22, 15.65],
  ['Antarctica/McMurdo', -77.85, 166.67],
  ['America/Santiago', -33.45, -70.67],
  ['Pacific/Kiritimati', 1.87, -157.4],
  ['America/St_Johns', 47.56, -52.71],
  ['Asia/Urumqi', 43.8, 87.6],
];

const library = shippedLibrary();
const trigger = (min: number, max: number) =>
  fc.tuple(figure(min, max), figure(min, max)).map((pair) => {
    const [low, high] = pair.sort((a, b) => a - b);
    return { low, high };
  });
const above = (min: number, max: number) =>
  maybe(trigger(min, max).map(({ low, high }) => ({ at: high, release: low })));
const below = (min: number, max: number) =>
  maybe(trigger(min, max).map(({ low, high }) => ({ at: low, release: high })));

const rule = (id: string) =>
  fc.record(
    {
      id: fc.constant(id),
      name: maybe(text),
      when: fc.record({
        months: maybe(months),
        dates: maybe(fc.record({ from: date, to: date })),
        weekdays: maybe(fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 })),
        clock: maybe(clock),
        sunOnFacade: maybe(fc.boolean()),
        irradianceAbove: above(0, 1500),
        outdoorAbove: above(-60, 60),
        roomBelow: below(0, 60),
      }),
      then: fc.oneof(
        fc.constant({ kind: 'raise' as const }),
        fc.record({ kind: fc.constant('lower' as const), share: maybe(figure(0.05, 1)) }),
        fc.record({ kind: fc.constant('tilt' as const), angle: figure(0, 75) }),
        fc.record({ kind: fc.constant('track' as const) }),
      ),
    },
    { requiredKeys: ['id', 'when', 'then'] },
  );

const schedule = fc.record({
  id: fc.constant('schedule-1'),
  name: title,
  rules: fc.tuple(rule('a'), rule('b')),
  minMinutesBetweenMoves: figure(0, 1440),
});

const sides = (min: number, max: number) =>
  fc.record({
    head: figure(min, max),
    sill: figure(min, max),
    left: figure(min, max),
    right: figure(min, max),
  });

const opening = (i: number, walls: number) =>
  fc.record(
    {
      id: fc.constant(`opening-${i}`),
      name: title,
      wall: fc.integer({ min: 0, max: walls - 1 }).map((w) => `wall-${w}`),
      room: fc.constant('room-1'),
      kind: fc.constantFrom('window' as const, 'fixed' as const),
      width: figure(0.7, 3),
      height: figure(0.7, 3),
      sillHeight: figure(0, 30),
      count: fc.integer({ min: 1, max: 3 }),
      frame: fc.record(
        {
          widths: sides(0, 0.3),
          Uf: figure(0.3, 3),
          psiSpacer: figure(0, 0.05),
          psiInstall: figure(0, 0.05),
          overInsulated: fc.boolean(),
          hidden: sides(0, 0.3),
        },
        { requiredKeys: ['widths', 'Uf', 'psiSpacer', 'psiInstall'] },
      ),
      setBack: figure(0, 0.3),
      reveal: sides(0, 2),
      revealReflectance: share,
      overhang: fc.record({
        projection: figure(0, 10),
        aboveHead: figure(0, 10),
        left: figure(0, 50),
        right: figure(0, 50),
      }),
      finLeft: fc.record({
        projection: figure(0, 10),
        offset: figure(0, 10),
        above: figure(0, 50),
        below: figure(0, 50),
      }),
      glazing: fc.constantFrom(...library.glazings.map((g) => g.id), 'own-glazing'),
      insectScreen: fc.record({
        blind: fc.constant('insect-screen-fine'),
        share: fc.constantFrom(0.5 as const, 1 as const),
        from: date,
        to: date,
      }),
      blind: fc.oneof(
        fc.record({
          blind: fc.constantFrom(...library.blinds.map((b) => b.id)),
          windLimit: figure(1, 40),
        }),
        fc.record({
          blind: fc.constant('own-slats'),
          standingAngle: figure(0, 70),
          schedule: fc.constant('schedule-1'),
        }),
        fc.record({
          blind: fc.constant('own-slats'),
          flowFactor: share,
          group: fc.constant('group-1'),
        }),
      ),
      blindPrice: figure(0.01, 5000),
      airing: fc.record({
        kind: fc.constantFrom('none' as const, 'turn' as const),
        width: figure(0.1, 0.7),
        height: figure(0.1, 0.7),
        tiltAngle: figure(0, 90),
      }),
      escapeRoute: fc.boolean(),
    },
    {
      requiredKeys: [
        ...(['id', 'name', 'wall', 'room', 'kind', 'width', 'height', 'sillHeight'] as const),
        ...(['frame', 'setBack', 'revealReflectance', 'glazing'] as const),
      ],
    },
  );

// So little sun that it may come in a polar night.
const climate = fc.oneof(
  fc.record({
    kind: fc.constant('station' as const),
    station: fc.constantFrom(...library.stations.map((s) => s.id)),
    seed: fc.integer({ min: 0, max: 4294967295 }),
  }),
  fc.record({ kind: fc.constant('file' as const), fileName: title, note: text }),
  fc
    .record({
      mean: list(figure(-30, 30), 12),
      swing: list(figure(0.1, 15), 12),
      sun: list(figure(0, 0.02), 12),
    })
    .map(({ mean, swing, sun }) => ({
      kind: 'monthly' as const,
      seed: 3,
      note: '',
      normals: {
        ghiKWhPerM2Day: sun,
        dryBulbMean: mean,
        dryBulbDailyMin: mean.map((t, i) => t - swing[i]),
        dryBulbDailyMax: mean.map((t, i) => t + swing[i]),
      },
    })),
);

const plainProject: fc.Arbitrary<ProjectInput> = fc.integer({ min: 1, max: 4 }).chain((walls) =>
  fc.record(
    {
      format: fc.constant('shadewright-project' as const),
      version: fc.constant(1 as const),
      name: title,
      notes: text,
      units: fc.constantFrom('metric' as const, 'imperial' as const),
      site: fc
        .tuple(
          fc.constantFrom(...PLACES),
          fc.record(
            {
              elevation: figure(-450, 6000),
              albedo: fc.oneof(share, list(share, 12)),
              horizon: fc.array(fc.record({ azimuth: figure(0, 360), altitude: figure(0, 90) }), {
                maxLength: 4,
              }),
              windExposure: figure(0, 1.5),
            },
            { requiredKeys: ['elevation'] },
          ),
        )
        .map(([[timeZone, latitude, longitude], more]) => ({
          name: 'Place',
          timeZone,
          latitude,
          longitude,
          ...more,
        })),
      year: fc.integer({ min: 1970, max: 2100 }),
      climate,
      walls: fc.tuple(
        ...Array.from({ length: walls }, (_, i) =>
          fc.record(
            {
              id: fc.constant(`wall-${i}`),
              name: title,
              azimuth: figure(0, 360),
              tilt: figure(0, 180),
              thickness: figure(0.3, 2),
              U: figure(0.02, 6),
            },
            { requiredKeys: ['id', 'name', 'azimuth', 'thickness', 'U'] },
          ),
        ),
      ),
      openings: fc.tuple(opening(0, walls), opening(1, walls), opening(2, walls)),
      glazings: fc.constant([{ ...library.glazings[0], id: 'own-glazing' }]),
      blinds: fc.constant([{ ...library.blinds[0], id: 'own-slats' }]),
      schedules: fc.tuple(schedule),
      groups: fc.tuple(
        fc.record({
          id: fc.constant('group-1'),
          name: title,
          channel: fc.integer({ min: 1, max: 999 }),
          schedule: fc.constant('schedule-1'),
          lead: fc.constant('any'),
        }),
      ),
      rooms: fc.tuple(room),
      settings: fc.record(
        {
          skyModel: fc.constantFrom('perez' as const, 'hay-davies' as const),
          overheatingLimit: figure(18, 40),
        },
        { requiredKeys: [] },
      ),
      page: fc.record(
        { title: fc.string(), question: fc.string(), notes: fc.string({ maxLength: 400 }) },
        { requiredKeys: [] },
      ),
    },
    {
      requiredKeys: [
        ...(['format', 'version', 'name', 'site', 'climate', 'walls', 'openings'] as const),
        ...(['glazings', 'blinds', 'schedules', 'groups', 'rooms'] as const),
      ],
    },
  ),
);

/** Projects as a sound file may have them, defaults absent here and there; some keep schemes. */
export const randomProject: fc.Arbitrary<ProjectInput> = fc
  .tuple(plainProject, maybe(fc.array(plainProject, { maxLength: 2 })))
  .map(([project, kept]) => {
    const schemes = kept?.map(({ format: _f, version: _v, page: _p, ...house }, i) => ({
      id: `kept-${i}`,
      house,
    }));
    return schemes ? { ...project, schemes } : project;
  });
