import fc from 'fast-check';
import { clock, figure, list, maybe, months, title } from './randomValues.ts';

const mass = fc.oneof(
  fc.record({
    kind: fc.constant('class' as const),
    class: fc.constantFrom('veryLight' as const, 'heavy' as const),
  }),
  fc.record({
    kind: fc.constant('layers' as const),
    surfaces: list(
      fc.record({
        name: title,
        area: figure(1, 90),
        layers: list(
          fc.record({
            thickness: figure(0.01, 0.4),
            conductivity: figure(0.03, 3),
            density: figure(20, 2500),
            specificHeat: figure(800, 2100),
          }),
          2,
        ),
      }),
      1,
    ),
  }),
);

const profile = fc.record({ weekday: list(figure(0, 900), 24), weekend: list(figure(0, 900), 24) });

/** A room with the id `room-1`; its airing may name `opening-0`. */
export const room = fc.record(
  {
    id: fc.constant('room-1'),
    name: title,
    use: fc.constantFrom('living' as const, 'bedroom' as const, 'work' as const),
    floorArea: figure(30, 200),
    volume: figure(20, 700),
    mass,
    envelope: fc.record({
      kind: fc.constant('total' as const),
      UA: figure(1, 300),
      groundUA: maybe(figure(0, 50)),
    }),
    thermalBridges: figure(0, 20),
    infiltration: fc.record({
      kind: fc.constant('n50' as const),
      n50: figure(0.1, 8),
      shielding: figure(0.01, 0.1),
    }),
    ventilation: fc.record({
      flow: fc.record({ kind: fc.constant('ach' as const), ach: figure(0, 2) }),
      heatRecovery: figure(0, 0.95),
    }),
    people: profile,
    appliances: profile,
    heating: fc.record({ setPoint: figure(15, 22), maxPower: maybe(figure(500, 9000)) }),
    occupied: fc.record({
      weekday: fc.array(clock, { maxLength: 2 }),
      weekend: fc.array(clock, { maxLength: 2 }),
    }),
    airing: list(
      fc.record({
        id: fc.constant('airing-1'),
        openings: maybe(fc.constant<string[]>(['opening-0'])),
        position: fc.constantFrom('tilt' as const, 'turn' as const),
        months: maybe(months),
        openAbove: figure(22, 28),
        closeBelow: figure(16, 21),
        margin: figure(0, 5),
        whenVacant: fc.constantFrom('open' as const, 'tilt' as const, 'closed' as const),
      }),
      1,
    ),
  },
  { noNullPrototype: true },
);
