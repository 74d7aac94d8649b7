/** Every word that schedules are told in, in one place so that it can become a language file. */
export const english = {
  months: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  weekdays: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],

  date: (day: number, month: string) => `${day} ${month}`,
  span: (from: string, to: string) => `${from} to ${to}`,
  weekdaySpan: (from: string, to: string) => `${from}-${to}`,
  /** Months or weekdays, spans among them. */
  days: (parts: string[]) => parts.join(', '),
  monthsWithin: (months: string, dates: string) => `${months} within ${dates}`,
  /** Conditions that must all hold. */
  all: (parts: string[]) =>
    parts.length < 2 ? parts.join() : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`,

  allYear: 'All year',
  noTime: 'At no time',
  paintedHours: 'painted hours',
  /** The days before what happens on them. */
  heading: (parts: string[]) => {
    const text = parts.join(', ');
    return text.charAt(0).toUpperCase() + text.slice(1);
  },
  sentence: (heading: string, action: string, hours: string, conditions: string) =>
    `${heading}: ${action}${hours && ` ${hours}`}${conditions && ` when ${conditions}`}.`,

  raised: 'raised',
  down: (share: string, slats: string) => `down${share && ` ${share}`}${slats && ` ${slats}`}`,
  share: (percent: string) => `over the upper ${percent} % of the glass`,
  slatsAt: (angle: string) => `with slats at ${angle}°`,
  slatsFollow: 'with slats following the sun',

  hours: (from: string, to: string) => `from ${from} to ${to}`,
  hoursIntoNextDay: (from: string, to: string) => `from ${from} to ${to} the next day`,
  allDay: 'all day',
  spansOfDay: (spans: string[]) => spans.join(' and '),
  hoursOfMonths: (months: string, hours: string) => `${months && `in ${months} `}${hours}`,
  painted: (parts: string[]) => parts.join('; '),

  sunOn: 'the sun is on the facade',
  sunOff: 'the sun is off the facade',
  /** Readings beside `sunOn` speak of the sun, alone of the facade. */
  sunGives: (range: string) => `it gives ${range}`,
  facadeGets: (range: string) => `the facade gets ${range}`,
  outdoors: (range: string) => `the outdoor air is at ${range}`,
  roomIs: (range: string) => `the room is at ${range}`,
  orMore: (at: string, release: string) => `${at} or more (until down to ${release})`,
  orLess: (at: string, release: string) => `${at} or less (until up to ${release})`,

  firstDecides: 'The first rule that applies decides; raised otherwise.',
  raisedOtherwise: 'Raised otherwise.',
  raisedAllYear: 'Raised all year.',
  pause: (minutes: string) => `At least ${minutes} min between two moves; wind does not wait.`,
};

/** What the ready-made schedules are for, what they cost, and where their values come from. */
export const presetWords = {
  'sun-on-glass': {
    name: 'Sun on glass, summer',
    purpose:
      'Down while strong sun is on the facade in the warm half of the year. Leaves the view free ' +
      'for the rest of the day; needs a sun sensor.',
    note: 'Common practice: 150 W/m2 on the facade, up again at 100, 30 minutes between moves.',
  },
  away: {
    name: 'Away on weekdays',
    purpose:
      'Down on working days in the warm half of the year while nobody is in. Costs no view that ' +
      'anybody would have; a timer is enough.',
    note: 'Common practice: 08:00 to 18:00. Set your own hours.',
  },
  privacy: {
    name: 'Privacy nights',
    purpose:
      'Down at night all year. Keeps the first summer sun out of east windows; otherwise stops no ' +
      'gain.',
    note: 'Common practice: 21:00 to 07:00. Set your own hours.',
  },
  track: {
    name: 'Track the sun, all year',
    purpose:
      'Slats turn just far enough to keep direct sun out. Keeps daylight and part of the view; ' +
      'costs winter gain. Needs a sun sensor.',
    note: 'Common practice: 150 W/m2 on the facade, up again at 100, 30 minutes between moves.',
  },
  'hot-outdoors': {
    name: 'Hot outdoors',
    purpose:
      'Down while the sun is on the facade and it is warm outdoors, whatever the date. Leaves cool ' +
      'sunny days their gain; needs a sun sensor and a thermometer.',
    note: 'Common practice: 22 C outdoors, up again at 20, 30 minutes between moves.',
  },
  'west-afternoon': {
    name: 'West, afternoon clock',
    purpose:
      'For west windows: down every summer afternoon, cloudy or not. A timer is enough; costs the ' +
      'evening view.',
    note: 'Common practice: 14:30 to 19:45. Set the hours by the sun on your facade.',
  },
  'east-morning': {
    name: 'East, morning clock',
    purpose:
      'For east windows: down every summer morning, cloudy or not. A timer is enough; costs the ' +
      'morning light.',
    note: 'Common practice: 05:30 to 11:30. Set the hours by the sun on your facade.',
  },
  'room-24': {
    name: 'Keep the room under 24 C',
    purpose:
      'Down while the sun is on the facade and the room is warm already. Leaves a cool room all ' +
      'its sun; needs a sun sensor and a room thermometer.',
    note: 'Common practice: from 23 C, a degree early because rooms answer late, up again at 22.',
  },
};

export type ScheduleWords = typeof english;
