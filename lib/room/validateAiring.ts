import { verbatim } from '../problem/index.ts';
import { sashArea } from './airing.ts';
import type { Checker } from './checker.ts';
import { say } from './say.ts';
import type { Room, RoomOpening } from './types.ts';

/** Checks sashes and airing rules. */
export function checkAiring(check: Checker, room: Room, openings: readonly RoomOpening[]): void {
  openings.forEach((o, i) => checkSash(check, o, i));
  room.airing.forEach((rule, i) => {
    const field = (key: string) => `airing[${i}].${key}`;
    check.range(field('openAbove'), rule.openAbove, 5, 50, 'C', 'usual23');
    check.range(field('closeBelow'), rule.closeBelow, 5, 50, 'C', 'usual20');
    check.range(field('margin'), rule.margin, 0, 20, 'K', 'usual1');
    check.range(field('windLimit'), rule.windLimit ?? 10, 0.1, 50, 'm/s', 'windLimit');
    if (rule.closeBelow >= rule.openAbove) {
      const allowed = say('room.below', { most: rule.openAbove });
      const value = { given: rule.closeBelow };
      check.fail(field('closeBelow'), 'notBelow', value, 'notBelowFix', allowed);
    }
    if (rule.clock) check.span(field('clock'), rule.clock);
    rule.months?.forEach((m, k) =>
      check.range(field(`months[${k}]`), m, 1, 12, undefined, 'january'),
    );
    for (const id of rule.openings ?? []) {
      if (openings.length === 0 || openings.some((o) => o.id === id)) continue;
      const allowed = verbatim(openings.map((o) => o.id).join(', '));
      check.fail(field('openings'), 'noOpening', { given: id }, 'nameOne', allowed);
    }
    if (room.heating && rule.closeBelow < room.heating.setPoint) {
      const allowed = say('room.orMore', { least: room.heating.setPoint });
      const value = { given: rule.closeBelow };
      check.warn(field('closeBelow'), 'heatsAndAirs', value, 'heatsAndAirsFix', allowed);
    }
    const opens = openings.some(
      (o) => (rule.openings?.includes(o.id) ?? true) && sashArea(o.airing, rule.position) > 0,
    );
    if (openings.length > 0 && !opens) {
      check.warn(field('position'), 'opensNothing', { given: rule.position }, 'opensNothingFix');
    }
  });
}

function checkSash(check: Checker, opening: RoomOpening, at: number): void {
  const { airing: sash } = opening;
  if (sash.kind === 'none') return;
  const field = (key: string) => `openings[${at}].airing.${key}`;
  check.positive(field('width'), sash.width, 'm', 'sash');
  check.positive(field('height'), sash.height, 'm', 'sash');
  check.range(field('tiltAngle'), sash.tiltAngle, 0, 90, 'degrees', 'tiltAngle');
  if (sash.width * sash.height > opening.area * 1.001) {
    const allowed = say('room.atMost', { most: opening.area, unit: say('unit.m2') });
    check.warn(field('width'), 'sashLarge', { given: sash.width * sash.height }, 'sash', allowed);
  }
}
