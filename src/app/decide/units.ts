import { fromSI, unitOf } from '../../../lib/units/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import type { Words } from '../../words/index.ts';
import type { Tongue } from './text.ts';

/** An energy in the units of the page, without its unit. */
export function energyText(words: Tongue, units: UnitSystem, kWh: number): string {
  return words.number(fromSI('energy', units, kWh));
}

export function energyUnit(units: UnitSystem): string {
  return unitOf('energy', units).symbol;
}

/** A short length with its unit: the depth of an overhang. */
export function lengthText(words: Tongue, units: UnitSystem, metres: number): string {
  const { symbol } = unitOf('length', units);
  return `${words.number(fromSI('length', units, metres), 1)}\u00a0${symbol}`;
}

/** The criterion a project is judged by, in a few words. */
export function criterionText(
  words: Tongue & Pick<Words, 'percent'>,
  { settings, units }: Pick<Project, 'settings' | 'units'>,
): string {
  const t = words.of('decide');
  const limit = fromSI('temperature', units, settings.overheatingLimit);
  const { symbol } = unitOf('temperature', units);
  const digits = Number.isInteger(limit) ? 0 : 1;
  switch (settings.criterion) {
    case 'shareAbove':
      return t('criteria.shareAbove', {
        share: words.percent(settings.overheatingShare),
        limit: `${words.number(limit, digits)} ${symbol}`,
      });
    case 'adaptive':
      return t('criteria.adaptive', { category: settings.adaptiveCategory });
    case 'bedroomNights':
      return t('criteria.bedroomNights');
    case 'din4108':
      return t('criteria.din4108', { region: settings.dinRegion });
  }
}

export function areaText(words: Tongue, units: UnitSystem, squareMetres: number): string {
  const { symbol } = unitOf('area', units);
  return `${words.number(fromSI('area', units, squareMetres), 1)}\u00a0${symbol}`;
}
