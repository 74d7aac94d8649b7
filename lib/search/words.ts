import type { FamilyId } from './types.ts';

/** Every word of the plain lines, in one place so that it can become a language file. */
export const searchWords = {
  months: [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ],
  date: (day: number, month: string) => `${day} ${month}`,
  season: (from: string, to: string) => `${from} to ${to}`,
  allYear: 'All year',
  /** The days and the target before what is done. */
  heading: (season: string, name: string) => `${season}, ${name}`,
  line: (heading: string, action: string) => `${heading}: ${action}`,
  dayAndNight: 'down day and night',
  clock: (down: string, up: string) => `down at ${down}, up at ${up}`,
  clockNextDay: (down: string, up: string) => `down at ${down}, up at ${up} the next day`,
  sun: (at: string) => `${at} W/m2 on the facade`,
  room: (at: string) => `${at} °C in the room`,
  down: (at: string, up: string) => `down at ${at}, up at ${up}`,
  slats: (at: string, up: string) => `slats follow the sun from ${at}, up at ${up}`,
  both: (sun: string, room: string) => `${sun} and ${room}`,
  either: (sun: string, room: string) => `${sun} or ${room}`,
  pause: (minutes: number) => `at least ${minutes} minutes between two moves`,
  alwaysUp: (name: string) => `All year, ${name}: stays up`,
};

export type SearchWords = typeof searchWords;

/** Names of the kinds of schedule. */
export const familyWords: Record<FamilyId, string> = {
  timer: 'timer',
  irradiance: 'sun on the facade',
  tracking: 'slats following the sun',
  room: 'room temperature',
  roomSun: 'room temperature and sun',
};
