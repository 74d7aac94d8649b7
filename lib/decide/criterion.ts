import type { Project } from '../project/index.ts';
import { adaptiveHours, bedroomNights, dinDegreeHours, shareAbove } from '../room/index.ts';
import type { CriterionResult } from '../room/index.ts';
import type { YearCalendar } from '../time/index.ts';

/** The criterion a project is judged by, on one room-year; the others are left out to save time. */
export function chosenCriterion(
  operative: Float64Array,
  outdoor: Float64Array,
  calendar: YearCalendar,
  settings: Project['settings'],
): CriterionResult {
  switch (settings.criterion) {
    case 'shareAbove':
      return shareAbove(operative, {
        threshold: settings.overheatingLimit,
        limit: settings.overheatingShare,
      });
    case 'adaptive':
      return adaptiveHours(operative, outdoor, calendar, settings.adaptiveCategory);
    case 'bedroomNights':
      return bedroomNights(operative, calendar);
    case 'din4108':
      return dinDegreeHours(operative, settings.dinRegion);
  }
}
