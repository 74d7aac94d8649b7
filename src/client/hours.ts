import { DIN_REGIONS } from '../../lib/room/index.ts';
import { HOURS } from '../../lib/time/index.ts';
import type { CriterionResult } from '../../lib/room/index.ts';
import type { PageFacts } from './facts.ts';
import type { Teller } from './teller.ts';

/** Too-hot hours of a room without and with shading, and how it stands to its limit. */
export interface RoomHoursText {
  id: string;
  name: string;
  before: string;
  after: string;
  criterion: string;
  kept?: boolean;
}

export function roomHours({ study }: PageFacts, teller: Teller): RoomHoursText[] {
  return study.rooms.map(({ id, name, without, with: shaded }) => ({
    id,
    name,
    before: teller.number(without.hotHours),
    after: teller.number(shaded.hotHours),
    criterion: criterionText(shaded.chosen, teller),
    ...(shaded.chosen.met === undefined ? {} : { kept: shaded.chosen.met }),
  }));
}

/** How a room stands to its limit in a sentence. */
function criterionText(criterion: CriterionResult, teller: Teller): string {
  const { t } = teller;
  const { limit, met, hoursJudged, unit } = criterion;
  if (limit === undefined) return '';
  const most =
    unit === '1'
      ? teller.hours(Math.floor(limit * hoursJudged + 1e-9))
      : criterionFigure(criterion, limit, teller);
  return t(met ? 'hours.kept' : 'hours.broken', { most });
}

/** Name of a criterion with its figures. */
export function criterionTitle(
  criterion: CriterionResult,
  { project }: PageFacts,
  teller: Teller,
): string {
  const { settings } = project;
  const { t } = teller;
  const limit = teller.quantity('temperature', settings.overheatingLimit, 0);
  const occupied = criterion.id === 'shareAbove' && criterion.hoursJudged < HOURS;
  switch (criterion.id) {
    case 'shareAbove':
      return t(occupied ? 'criterion.shareOccupied' : 'criterion.share', { limit });
    case 'adaptive':
      return t('criterion.adaptive', { category: settings.adaptiveCategory });
    case 'bedroomNights':
      return t('criterion.bedroomNights', { limit: teller.quantity('temperature', 26, 0) });
    case 'din4108':
      return t('criterion.din4108', {
        region: settings.dinRegion,
        limit: teller.quantity('temperature', DIN_REGIONS[settings.dinRegion], 0),
      });
    case 'degreeHours':
      return t('criterion.degreeHours', { limit });
  }
}

/** A figure of a criterion with its unit: `8.8 %`, `1,200 K h`. */
export function criterionFigure({ unit }: CriterionResult, value: number, teller: Teller): string {
  if (unit === '1') return teller.words.percent(value, 1);
  return unit === 'Kh' ? teller.quantity('degreeHours', value, 0) : teller.hours(value);
}
