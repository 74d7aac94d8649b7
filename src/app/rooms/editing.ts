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

export const USES = [
  { value: 'living', text: 'Living room or kitchen' },
  { value: 'bedroom', text: 'Bedroom' },
  { value: 'work', text: 'Work room' },
  { value: 'other', text: 'Other' },
] as const;

/** Heaviness classes in plain words; what counts as which is common practice. */
export const MASSES = [
  { value: 'veryLight', text: 'Very light', means: 'boards and insulation all round' },
  { value: 'light', text: 'Light', means: 'timber frame, boards on walls and ceiling' },
  { value: 'medium', text: 'Medium', means: 'timber walls on a screed or tiled floor' },
  { value: 'heavy', text: 'Heavy', means: 'masonry walls or a bare concrete floor and ceiling' },
  { value: 'veryHeavy', text: 'Very heavy', means: 'bare masonry and concrete all round' },
] as const;

export const BOUNDARIES = [
  { value: 'outdoor', text: 'Outdoor air' },
  { value: 'ground', text: 'Ground' },
  { value: 'room', text: 'Another room' },
] as const;

/** The value of a list of choices that a field gave back; the one before where there is none. */
export function pickOf<T extends string>(
  choices: readonly { value: T }[],
  value: string,
  before: T,
): T {
  return choices.find((choice) => choice.value === value)?.value ?? before;
}

/** `7:00`, and `24:00` for the end of the day. */
export function clockWords(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}
