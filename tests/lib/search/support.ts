import type { Schedule } from '../../../lib/schedule/index.ts';
import type { SearchFigures } from '../../../lib/search/index.ts';
import { sunUpSteps } from '../../../lib/decide/index.ts';
import type { StudyInput, StudyResult } from '../../../lib/study/index.ts';
import { dayOfYear } from '../../../lib/time/index.ts';
import { clearYear, library } from '../study/support.ts';
import { paneHouse, paneYear } from '../decide/support.ts';

/** A room behind a west pane that is too hot with its screen up and well with it down. */
export function westHouse(): StudyInput {
  const west = { azimuth: 270, width: 1.5, height: 2, blind: 'external-screen-zip' };
  const project = paneHouse([west, { azimuth: 180, width: 1.2, height: 1.2 }]);
  return { project, library, year: paneYear() };
}

/** The same near Melbourne: clear skies, warmest in January. */
export function southernHouse(): StudyInput {
  const { project } = westHouse();
  const site = {
    ...project.site,
    latitude: -37.8,
    longitude: 145,
    elevation: 30,
    timeZone: 'Australia/Melbourne',
  };
  const year = clearYear(site);
  const january = dayOfYear(1, 20);
  year.dryBulb = year.dryBulb.map((_, hour) => {
    const season = Math.cos((2 * Math.PI * (hour / 24 - january)) / 365);
    const day = Math.cos((2 * Math.PI * ((hour % 24) - 15)) / 24);
    return 14 + 7 * season + 5 * day;
  });
  return { project: { ...project, site }, library, year };
}

/** Puts a schedule on the blinds of some openings, each moved by itself. */
export function scheduled(
  input: StudyInput,
  openings: readonly string[],
  schedule: Schedule,
): StudyInput {
  const { project } = input;
  const id = 'for-the-test';
  return {
    ...input,
    project: {
      ...project,
      schedules: [...project.schedules, { ...schedule, id }],
      openings: project.openings.map((o) =>
        openings.includes(o.id) && o.blind
          ? { ...o, blind: { blind: o.blind.blind, schedule: id } }
          : o,
      ),
    },
  };
}

type OwnFigures = Pick<
  SearchFigures,
  'hours' | 'kept' | 'beyond' | 'viewHoursLost' | 'usefulLost' | 'moves' | 'price'
>;

/**
 * Figures of one opening's schedule counted afresh from hourly series and positions: the share of
 * the year over 25 C, at most a tenth; prices 1, 1 and 0.1 as documented.
 */
export function ownFigures(result: StudyResult, up: StudyResult, id: string): OwnFigures {
  const { room, blind } = result.openings.find((o) => o.id === id)!;
  const of = (r: StudyResult) => r.rooms.find((x) => x.id === room)!.runs.with;
  const { operative } = of(result).year;
  const { occupied } = of(result).model;
  const hours = operative.filter((t) => t > 25).length;
  const heat = (r: StudyResult) => of(r).year.heating.reduce((sum, w) => sum + w, 0) / 1000;
  const state = blind?.state ?? new Uint8Array(35040);
  const sunUp = sunUpSteps(up);
  let view = 0;
  let moves = 0;
  state.forEach((s, step) => {
    const hour = Math.floor(step / 4);
    if (s !== state[(step + 35039) % 35040]) moves++;
    if (s !== 0 && occupied[hour] && sunUp[step]) view += 0.25;
  });
  const usefulLost = heat(result) - heat(up);
  return {
    hours,
    kept: hours <= 876,
    beyond: Math.max(hours - 876, 0),
    viewHoursLost: view,
    usefulLost,
    moves,
    price: view + Math.max(usefulLost, 0) + 0.1 * moves,
  };
}

/** Schedules set up again from the words of their printed lines alone. */
export function fromLines(lines: readonly string[]): Omit<Schedule, 'id' | 'name'> {
  const months =
    'January February March April May June July August September October November December'.split(
      ' ',
    );
  const number = '(-?\\d+(?:\\.\\d+)?)';
  const [line, pause] = lines;
  const date = (text: string) => {
    const [day, month] = text.split(' ');
    const two = (n: number) => String(n).padStart(2, '0');
    return `${two(months.indexOf(month) + 1)}-${two(Number(day))}`;
  };
  const minutes = (text: string) => 60 * Number(text.slice(0, 2)) + Number(text.slice(3));
  const season = /^(\d+ \w+) to (\d+ \w+), /.exec(line);
  const clock = /: down at (\d\d:\d\d), up at (\d\d:\d\d)(?: the next day)?$/.exec(line);
  const sun = [...line.matchAll(new RegExp(`${number} W/m² on the facade`, 'g'))];
  const room = [...line.matchAll(new RegExp(`${number} °C in the room`, 'g'))];
  const trigger = (found: RegExpMatchArray[]) => ({
    at: Number(found[0][1]),
    release: Number(found[1][1]),
  });
  const when = {
    ...(season && { dates: { from: date(season[1]), to: date(season[2]) } }),
    ...(clock && { clock: { from: minutes(clock[1]), to: minutes(clock[2]) } }),
    ...(sun.length > 0 && { irradianceAbove: trigger(sun) }),
    ...(room.length > 0 && { roomAbove: trigger(room) }),
  };
  const kind = line.includes(': slats follow the sun from ') ? 'track' : 'lower';
  return {
    rules: [{ id: 'printed', when, then: { kind } }],
    minMinutesBetweenMoves: pause ? Number(/^at least (\d+) minutes/.exec(pause)![1]) : 0,
  };
}
