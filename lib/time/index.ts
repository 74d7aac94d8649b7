export { HOURS, STEPS, STEPS_PER_HOUR, DAYS, monthOfDay, dayOfYear, daysInMonth } from './year.ts';
export { standardOffset, isTimeZone } from './zone.ts';
export { buildCalendar, clockText, dateText } from './calendar.ts';
export type { YearCalendar } from './calendar.ts';
