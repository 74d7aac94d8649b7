import type { Room } from '../room/index.ts';

const day = (from: number, to: number, inside: number, outside: number): number[] =>
  Array.from({ length: 24 }, (_, hour) => (hour >= from && hour < to ? inside : outside));

/** A living room of 40 m2 in a very well insulated, airtight timber house with a screed floor. */
export function defaultRoom(): Room {
  return {
    id: 'room',
    name: 'Living room',
    use: 'living',
    floorArea: 40,
    volume: 104,
    mass: { kind: 'class', class: 'medium' },
    envelope: {
      kind: 'parts',
      parts: [
        { name: 'Walls', area: 62, U: 0.12, boundary: 'outdoor' },
        { name: 'Roof', area: 40, U: 0.1, boundary: 'outdoor' },
        { name: 'Floor', area: 40, U: 0.12, boundary: 'ground' },
      ],
    },
    thermalBridges: 0,
    infiltration: { kind: 'n50', n50: 0.6, shielding: 0.07 },
    ventilation: {
      flow: { kind: 'volume', m3PerHour: 40 },
      heatRecovery: 0.8,
      bypassAbove: 22,
    },
    people: { weekday: day(8, 17, 0, 90), weekend: day(0, 24, 90, 90) },
    appliances: { weekday: day(17, 23, 120, 40), weekend: day(9, 23, 100, 40) },
    heating: { setPoint: 20 },
    occupied: {
      weekday: [{ from: 1020, to: 480 }],
      weekend: [{ from: 0, to: 0 }],
    },
    airing: [
      {
        id: 'warm',
        name: 'Open when it is warm inside and cooler outside',
        position: 'tilt',
        openAbove: 24,
        closeBelow: 22,
        margin: 2,
        whenVacant: 'closed',
        windLimit: 10,
      },
    ],
  };
}
