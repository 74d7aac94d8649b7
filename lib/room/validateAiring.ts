import { sashArea } from './airing.ts';
import type { Checker } from './checker.ts';
import type { Room, RoomOpening } from './types.ts';

/** Checks sashes and airing rules. */
export function checkAiring(check: Checker, room: Room, openings: readonly RoomOpening[]): void {
  openings.forEach((o, i) => checkSash(check, o, i));
  room.airing.forEach((rule, i) => {
    const field = (key: string) => `airing[${i}].${key}`;
    check.range(field('openAbove'), rule.openAbove, 5, 50, 'C', 'About 23 is usual.');
    check.range(field('closeBelow'), rule.closeBelow, 5, 50, 'C', 'About 20 is usual.');
    check.range(field('margin'), rule.margin, 0, 20, 'K', 'About 1 is usual.');
    check.range(field('windLimit'), rule.windLimit ?? 10, 0.1, 50, 'm/s', 'Leave out for none.');
    if (rule.closeBelow >= rule.openAbove) {
      const fix = 'Leave a gap of a kelvin or more, or the sash flutters.';
      const allowed = `below ${rule.openAbove} C`;
      check.fail(field('closeBelow'), 'is not below openAbove', rule.closeBelow, fix, allowed);
    }
    if (rule.clock) check.span(field('clock'), rule.clock);
    rule.months?.forEach((m, k) => check.range(field(`months[${k}]`), m, 1, 12, '', 'January 1.'));
    for (const id of rule.openings ?? []) {
      if (openings.length === 0 || openings.some((o) => o.id === id)) continue;
      const allowed = openings.map((o) => o.id).join(', ');
      check.fail(field('openings'), 'names no opening of this room', id, 'Name one.', allowed);
    }
    if (room.heating && rule.closeBelow < room.heating.setPoint) {
      const fix = 'Shut at or above the heating set-point.';
      const allowed = `${room.heating.setPoint} C or more`;
      check.warn(field('closeBelow'), 'heats and airs at once', rule.closeBelow, fix, allowed);
    }
    const opens = openings.some(
      (o) => (rule.openings?.includes(o.id) ?? true) && sashArea(o.airing, rule.position) > 0,
    );
    if (openings.length > 0 && !opens) {
      const fix = 'Name an opening whose sash takes that position.';
      check.warn(field('position'), 'opens nothing', rule.position, fix);
    }
  });
}

function checkSash(check: Checker, opening: RoomOpening, at: number): void {
  const { airing: sash } = opening;
  if (sash.kind === 'none') return;
  const field = (key: string) => `openings[${at}].airing.${key}`;
  const fix = 'Measure the sash.';
  check.positive(field('width'), sash.width, 'm', fix);
  check.positive(field('height'), sash.height, 'm', fix);
  check.range(field('tiltAngle'), sash.tiltAngle, 0, 90, 'degrees', '6 to 10 is usual.');
  if (sash.width * sash.height > opening.area * 1.001) {
    const allowed = `at most ${opening.area} m2`;
    const value = sash.width * sash.height;
    check.warn(field('width'), 'makes a sash larger than its opening', value, fix, allowed);
  }
}
