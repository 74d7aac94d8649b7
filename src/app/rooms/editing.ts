import type { Project } from '../../../lib/project/index.ts';
import type { Room } from '../../../lib/room/index.ts';

/** What the sections of the form are given: the room, and the way to change it. */
export interface SectionProps {
  room: Room;
  /**
   * Changes the chosen room in a draft of the project.
   * @param field edits of one field shortly after one another undo as one
   */
  edit: (change: (room: Room, draft: Project) => void, field: string) => void;
}

export const USES = ['living', 'bedroom', 'work', 'other'] as const;

/** Heaviness classes; what counts as which is common practice. */
export const MASSES = ['veryLight', 'light', 'medium', 'heavy', 'veryHeavy'] as const;

export const BOUNDARIES = ['outdoor', 'ground', 'room'] as const;

/** Days with hours of their own. */
export const DAY_KINDS = ['weekday', 'weekend'] as const;

/** What a field of choices is given. */
export function choicesOf<T extends string>(
  values: readonly T[],
  say: (value: T) => string,
): { value: T; text: string }[] {
  return values.map((value) => ({ value, text: say(value) }));
}

/** The one of some values that a field gave back; the one before where there is none. */
export function pickOf<T extends string>(values: readonly T[], value: string, before: T): T {
  return values.find((other) => other === value) ?? before;
}

/** `7:00`, and `24:00` for the end of the day. */
export function clockWords(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}
