import type { CriterionResult } from '../../../lib/room/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { fromSI, unitOf } from '../../../lib/units/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import type { RoomSummary } from '../../worker/api.ts';
import { hoursText, plainTemperature } from '../charts/room/describe.ts';
import { figure, measured } from '../charts/words.ts';

type Criterion = Project['settings']['criterion'];

/** A temperature kept in C, with as many decimals as it needs. */
export function temperatureText(celsius: number, units: UnitSystem): string {
  return plainTemperature(
    fromSI('temperature', units, celsius),
    unitOf('temperature', units).symbol,
  );
}

/** A share with a decimal where it needs one: `10 %`, `17.6 %`. */
export function shareText(share: number): string {
  const percent = share * 100;
  const digits = Math.abs(percent - Math.round(percent)) < 0.05 ? 0 : 1;
  return measured(percent, digits, '%');
}

/** The figure of a criterion, or its limit, in shown units. */
export function criterionFigure(
  unit: CriterionResult['unit'],
  value: number,
  units: UnitSystem,
): string {
  if (unit === '1') return measured(value * 100, 1, '%');
  if (unit === 'h') return measured(value, 0, 'h');
  return measured(fromSI('degreeHours', units, value), 0, unitOf('degreeHours', units).symbol);
}

/** The same for a limit: no decimals it does not have. */
export function limitFigure(
  unit: CriterionResult['unit'],
  value: number,
  units: UnitSystem,
): string {
  return unit === '1' ? shareText(value) : criterionFigure(unit, value, units);
}

/** The title of a criterion with its temperature in shown units. */
export function criterionTitle(
  { title }: Pick<CriterionResult, 'title'>,
  units: UnitSystem,
): string {
  return title.replace(/(\d+(?:\.\d+)?) C\b/, (_, celsius: string) =>
    temperatureText(Number(celsius), units),
  );
}

/** What a limit is held against, as it stands in a sentence. */
const OF: Record<Criterion, string> = {
  shareAbove: 'of the year',
  adaptive: 'of the hours over the adaptive bound',
  bedroomNights: 'of the night hours over',
  din4108: 'over',
};

/** The answer in two sentences: the hours, and whether the deciding limit is kept. */
export function roomVerdict(
  room: Pick<RoomSummary, 'name' | 'without' | 'with'>,
  settings: Project['settings'],
  units: UnitSystem,
): { hours: string; limit: string } {
  const limit = temperatureText(settings.overheatingLimit, units);
  const { without, with: shaded } = room;
  const hours =
    without.hotHours + shaded.hotHours === 0
      ? `${room.name} is never over ${limit}, neither without shading nor with it.`
      : `${room.name}: ${hoursText(without.hotHours)} over ${limit} without shading, ${figure(shaded.hotHours)} with.`;
  return { hours, limit: limitWords(without.chosen, shaded.chosen, units) };
}

function limitWords(bare: CriterionResult, shaded: CriterionResult, units: UnitSystem): string {
  if (bare.limit === undefined) return '';
  const temperature = /(\d+(?:\.\d+)?) C\b/.exec(bare.title)?.[1];
  const over = OF[bare.id as Criterion] ?? '';
  const of =
    temperature !== undefined && over.endsWith('over')
      ? `${over} ${temperatureText(Number(temperature), units)}`
      : over;
  const limit = `The limit of ${limitFigure(bare.unit, bare.limit, units)} ${of}`;
  const figures = `(${criterionFigure(bare.unit, bare.value, units)} without, ${criterionFigure(shaded.unit, shaded.value, units)} with)`;
  if (bare.met && shaded.met) return `${limit} is kept both without and with ${figures}.`;
  if (shaded.met) return `${limit} is broken without and kept with ${figures}.`;
  if (bare.met) return `${limit} is kept without and broken with ${figures}.`;
  return `${limit} is broken both without and with ${figures}.`;
}

/** How the room's heating fares, in a sentence or two. */
export function heatingWords(
  room: Pick<RoomSummary, 'without' | 'with'>,
  units: UnitSystem,
): string {
  const { without, with: shaded } = room;
  const energy = (kWh: number) =>
    measured(fromSI('energy', units, kWh), 0, unitOf('energy', units).symbol);
  if (without.heatingKWh + shaded.heatingKWh < 0.5) return 'The room needs no heating.';
  const more = shaded.heatingKWh - without.heatingKWh;
  const share =
    without.heatingKWh > 0 ? ` (${shareText(Math.abs(more) / without.heatingKWh)})` : '';
  const cost =
    Math.abs(more) < 0.5
      ? 'The shading costs no heat.'
      : more > 0
        ? `The shading costs ${energy(more)} of heat a year${share}.`
        : `The shading saves ${energy(-more)} of heat a year${share}.`;
  return `The room needs ${energy(without.heatingKWh)} of heat a year without shading and ${energy(shaded.heatingKWh)} with. ${cost}`;
}
