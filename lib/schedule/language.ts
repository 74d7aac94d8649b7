/**
 * Every word that sentences about schedules are made of, in one place, so that it can be moved to
 * a file for each language.
 */
export interface ScheduleLanguage {
  /** For names of months and weekdays and for lists, BCP 47. */
  locale: string;
  /** `1 May` */
  date(day: number, month: string): string;
  /** `1 May to 15 Sep`, `May to Sep` */
  span(from: string, to: string): string;
  /** `Mon-Fri` */
  dayRange(from: string, to: string): string;
  /** `Mon, Wed` */
  dayList(days: string[]): string;
  always: string;
  never: string;
  everyDay: string;
  /** `1 May to 15 Sep, Mon-Fri` before what happens then. */
  heading(parts: string[]): string;
  /** A sentence of what happens under a heading. */
  sentence(heading: string, body: string): string;
  up: string;
  down: string;
  /** Parts that follow `down`, in this order. */
  share(percent: string): string;
  slatsAt(angle: string): string;
  slatsFollow: string;
  allDay: string;
  /** `14:30` of minutes after midnight. */
  clock(minutes: number): string;
  /** `from 14:30 to 19:45` */
  between(from: string, to: string): string;
  /** `at 14:30` */
  at(time: string): string;
  /** What a rule starts and what ends it: `down at 14:30`, `up at 19:45`. */
  startAndEnd(start: string, end: string): string;
  /** Spans of a painted grid, one text for each run of months. */
  months(runs: string[]): string;
  monthSpans(months: string, spans: string): string;
  /** `while it is so and so` */
  whilst(conditions: string): string;
  sunOn: string;
  sunOff: string;
  irradianceAbove(at: string, release: string): string;
  irradianceBelow(at: string, release: string): string;
  outdoorAbove(at: string, release: string): string;
  outdoorBelow(at: string, release: string): string;
  roomAbove(at: string, release: string): string;
  roomBelow(at: string, release: string): string;
}

const until = (at: string, release: string) =>
  at === release ? '' : ` (until back at ${release})`;

export const english: ScheduleLanguage = {
  locale: 'en-US',
  date: (day, month) => `${day} ${month}`,
  span: (from, to) => `${from} to ${to}`,
  dayRange: (from, to) => `${from}-${to}`,
  dayList: (days) => days.join(', '),
  always: 'Always',
  never: 'Never',
  everyDay: 'Every day',
  heading: (parts) => parts.join(', '),
  sentence: (heading, body) => `${heading}: ${body}`,
  up: 'up',
  down: 'down',
  share: (percent) => `over ${percent} of the glass height`,
  slatsAt: (angle) => `with slats at ${angle}`,
  slatsFollow: 'with slats following the sun',
  allDay: 'all day',
  clock: (minutes) =>
    `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`,
  between: (from, to) => `from ${from} to ${to}`,
  at: (time) => `at ${time}`,
  startAndEnd: (start, end) => `${start}, ${end}`,
  months: (runs) => runs.join('; '),
  monthSpans: (months, spans) => `in ${months} ${spans}`,
  whilst: (conditions) => `while ${conditions}`,
  sunOn: 'the sun is on the facade',
  sunOff: 'the sun is off the facade',
  irradianceAbove: (at, release) =>
    `irradiance on the facade has reached ${at}${until(at, release)}`,
  irradianceBelow: (at, release) =>
    `irradiance on the facade has fallen to ${at}${until(at, release)}`,
  outdoorAbove: (at, release) => `it has reached ${at} outdoors${until(at, release)}`,
  outdoorBelow: (at, release) => `it has fallen to ${at} outdoors${until(at, release)}`,
  roomAbove: (at, release) => `the room has reached ${at}${until(at, release)}`,
  roomBelow: (at, release) => `the room has fallen to ${at}${until(at, release)}`,
};
