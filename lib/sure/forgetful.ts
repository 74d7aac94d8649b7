import { freeId } from '../project/index.ts';
import type { Project, ProjectOpening } from '../project/index.ts';
import type { Rule, Schedule } from '../schedule/index.ts';
import type { Library } from '../study/index.ts';
import { DAYS, dayOfYear, daysInMonth } from '../time/index.ts';

/** One day in so many is forgotten. */
export const FORGET_EVERY = 5;

/** Days 0 to 364 on which the blinds are forgotten: one of every five, the same for a seed. */
export function forgottenDays(seed: number): number[] {
  // Lehmer's generator (Park & Miller 1988), whose products stay whole in a double.
  let state = (Math.abs(Math.trunc(seed)) % 2147483646) + 1;
  const next = () => (state = (state * 48271) % 2147483647);
  next();
  return Array.from(
    { length: DAYS / FORGET_EVERY },
    (_, i) => FORGET_EVERY * i + (next() % FORGET_EVERY),
  );
}

/** Whether a schedule reads sun, weather or the room: a drive with sensors, which does not forget. */
export function hasSensors({ rules }: Schedule): boolean {
  return rules.some(
    ({ when }) =>
      when.sunOnFacade !== undefined ||
      when.irradianceAbove !== undefined ||
      when.irradianceBelow !== undefined ||
      when.outdoorAbove !== undefined ||
      when.outdoorBelow !== undefined ||
      when.roomAbove !== undefined ||
      when.roomBelow !== undefined,
  );
}

/**
 * Ids of the openings whose blind is moved by hand: one that goes by clock and calendar alone, and
 * any internal blind, whatever its schedule says (common practice). A drive with sensors is none.
 */
export function handMoved(project: Project, library: Library): Set<string> {
  const positions = new Map([...library.blinds, ...project.blinds].map((b) => [b.id, b.position]));
  const isInternal = (o: ProjectOpening) =>
    o.blind !== undefined && positions.get(o.blind.blind) === 'internal';
  const bySensors = new Map(project.schedules.map((s) => [s.id, hasSensors(s)]));
  const isHand = (opening: ProjectOpening): boolean => {
    const { blind } = opening;
    if (!blind) return false;
    if (!blind.group) return isInternal(opening) || bySensors.get(blind.schedule ?? '') === false;
    const group = project.groups.find((g) => g.id === blind.group);
    const members = project.openings.filter((o) => o.blind?.group === blind.group);
    return members.every(isInternal) || bySensors.get(group?.schedule ?? '') === false;
  };
  return new Set(project.openings.filter(isHand).map((o) => o.id));
}

/** The project with its hand-moved blinds left up on one day in five. */
export function forgetful(project: Project, library: Library, seed: number): Project {
  const hand = handMoved(project, library);
  const rules = raiseRules(forgottenDays(seed));
  const twins = new Map<string, Schedule>();
  const taken = project.schedules.map((s) => s.id);
  const twinOf = (id: string): string => {
    const schedule = project.schedules.find((s) => s.id === id);
    if (!schedule) return id;
    let twin = twins.get(id);
    if (!twin) {
      const name = freeId(`${id}-forgotten`, taken);
      taken.push(name);
      twin = { ...schedule, id: name, rules: [...rules, ...schedule.rules] };
      twins.set(id, twin);
    }
    return twin.id;
  };
  const groups = project.groups.map((group) => {
    const members = project.openings.filter((o) => o.blind?.group === group.id);
    const isHand = members.length > 0 && members.every((o) => hand.has(o.id));
    return isHand ? { ...group, schedule: twinOf(group.schedule) } : group;
  });
  const openings = project.openings.map((opening) => {
    const { blind } = opening;
    if (!blind?.schedule || blind.group || !hand.has(opening.id)) return opening;
    return { ...opening, blind: { ...blind, schedule: twinOf(blind.schedule) } };
  });
  return { ...project, groups, openings, schedules: [...project.schedules, ...twins.values()] };
}

/** Rules that keep a blind up on these days. */
function raiseRules(days: readonly number[]): Rule[] {
  return days.map((day, i): Rule => {
    const date = monthDay(day);
    return {
      id: `forgotten-${i}`,
      when: { dates: { from: date, to: date } },
      then: { kind: 'raise' },
    };
  });
}

/** `MM-DD` of a day 0 to 364. */
function monthDay(day: number): string {
  const month = daysInMonth.findIndex((count, m) => day < dayOfYear(m + 1, 1) + count) + 1;
  const text = (value: number) => String(value).padStart(2, '0');
  return `${text(month)}-${text(day - dayOfYear(month, 1) + 1)}`;
}
