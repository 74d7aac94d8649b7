import type { CriterionResult } from '../../../lib/room/index.ts';
import type { ProjectSettings } from '../../../lib/project/index.ts';
import { fromSI, unitOf } from '../../../lib/units/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import type { Wording } from '../../words/index.ts';
import type { RoomSummary } from '../../worker/api.ts';
import { hoursText, plainTemperature } from '../charts/room/describe.ts';

/** A temperature kept in C, with as many decimals as it needs. */
export function temperatureText(words: Wording, celsius: number, units: UnitSystem): string {
  return plainTemperature(
    words,
    fromSI('temperature', units, celsius),
    unitOf('temperature', units).symbol,
  );
}

/** A share with a decimal where it needs one: `10 %`, `17.6 %`. */
export function shareText(words: Wording, share: number): string {
  const percent = share * 100;
  return words.share(share, Math.abs(percent - Math.round(percent)) < 0.05 ? 0 : 1);
}

/** The figure of a criterion, or its limit, in shown units. */
export function criterionFigure(
  words: Wording,
  unit: CriterionResult['unit'],
  value: number,
  units: UnitSystem,
): string {
  if (unit === '1') return words.share(value, 1);
  if (unit === 'h') return words.measured(value, 0, 'h');
  const { symbol } = unitOf('degreeHours', units);
  return words.measured(fromSI('degreeHours', units, value), 0, symbol);
}

/** The same for a limit: no decimals it does not have. */
export function limitFigure(
  words: Wording,
  unit: CriterionResult['unit'],
  value: number,
  units: UnitSystem,
): string {
  return unit === '1' ? shareText(words, value) : criterionFigure(words, unit, value, units);
}

/** The title of a criterion with its temperature in shown units. */
export function criterionTitle(
  words: Wording,
  { title }: Pick<CriterionResult, 'title'>,
  units: UnitSystem,
): string {
  return words
    .text(title)
    .replace(/(\d+(?:[.,]\d+)?) °?C\b/, (_, celsius: string) =>
      temperatureText(words, Number(celsius.replace(',', '.')), units),
    );
}

/** The answer in two sentences: the hours, and whether the deciding limit is kept. */
export function roomVerdict(
  words: Wording,
  room: Pick<RoomSummary, 'name' | 'without' | 'with'>,
  settings: ProjectSettings,
  units: UnitSystem,
): { hours: string; limit: string } {
  const t = words.of('rooms');
  const { without, with: shaded } = room;
  const of = { room: room.name, limit: temperatureText(words, settings.overheatingLimit, units) };
  const hours =
    without.hotHours + shaded.hotHours === 0
      ? t('never', of)
      : t('verdict.hours', {
          ...of,
          bare: hoursText(words, without.hotHours),
          shaded: words.figure(shaded.hotHours),
        });
  return { hours, limit: limitWords(words, without.chosen, shaded.chosen, units) };
}

function limitWords(
  words: Wording,
  bare: CriterionResult,
  shaded: CriterionResult,
  units: UnitSystem,
): string {
  if (bare.limit === undefined) return '';
  const given = {
    limit: limitText(words, bare, bare.limit, units),
    bare: criterionFigure(words, bare.unit, bare.value, units),
    shaded: criterionFigure(words, shaded.unit, shaded.value, units),
  };
  const t = words.of('rooms');
  if (bare.met && shaded.met) return t('verdict.keptBoth', given);
  if (shaded.met) return t('verdict.keptWith', given);
  return bare.met ? t('verdict.keptWithout', given) : t('verdict.brokenBoth', given);
}

/** A limit and what it is held against. */
function limitText(
  words: Wording,
  { id, unit, title }: CriterionResult,
  value: number,
  units: UnitSystem,
): string {
  const t = words.of('rooms');
  const limit = limitFigure(words, unit, value, units);
  const temperature = temperatureText(words, Number(title.values?.temperature), units);
  switch (id) {
    case 'bedroomNights':
      return t('verdict.limit.bedroomNights', { limit, temperature });
    case 'din4108':
      return t('verdict.limit.din4108', { limit, temperature });
    case 'adaptive':
      return t('verdict.limit.adaptive', { limit });
    default:
      return t('verdict.limit.shareAbove', { limit });
  }
}

/** How the room's heating fares, in a sentence or two. */
export function heatingWords(
  words: Wording,
  room: Pick<RoomSummary, 'without' | 'with'>,
  units: UnitSystem,
): string {
  const t = words.of('rooms');
  const bare = room.without.heatingKWh;
  const shaded = room.with.heatingKWh;
  const { symbol } = unitOf('energy', units);
  const energyText = (kWh: number) => words.measured(fromSI('energy', units, kWh), 0, symbol);
  if (bare + shaded < 0.5) return t('heating.none');
  const needs = t('heating.needs', { bare: energyText(bare), shaded: energyText(shaded) });
  return `${needs} ${costWords(words, bare, shaded, energyText)}`;
}

function costWords(
  words: Wording,
  bare: number,
  shaded: number,
  energyText: (kWh: number) => string,
): string {
  const t = words.of('rooms');
  const more = shaded - bare;
  if (Math.abs(more) < 0.5) return t('heating.costsNothing');
  const energy = energyText(Math.abs(more));
  if (bare <= 0) return more > 0 ? t('heating.costs', { energy }) : t('heating.saves', { energy });
  const share = shareText(words, Math.abs(more) / bare);
  return t(more > 0 ? 'heating.costsShare' : 'heating.savesShare', { energy, share });
}
