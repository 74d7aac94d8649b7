import type { FamilyId, SearchFigures, SearchFindings } from '../../../lib/search/index.ts';

/** A schedule in the table of a search. */
export interface SearchRow {
  kind: FamilyId | 'planned' | 'alwaysUp' | 'seasonDown' | 'ideal';
  figures: SearchFigures;
  chosen: boolean;
}

/** What is planned, the plainest two, the best of each kind, and what hindsight could do. */
export function searchRows(findings: SearchFindings): SearchRow[] {
  const { planned, alwaysUp, seasonDown, families, ideal, choice } = findings;
  const row = (kind: SearchRow['kind'], figures: SearchFigures): SearchRow => ({
    kind,
    figures,
    chosen: kind === choice,
  });
  return [
    row('planned', planned),
    row('alwaysUp', alwaysUp),
    row('seasonDown', seasonDown),
    ...families.map(({ family, figures }) => row(family, figures)),
    row('ideal', ideal.figures),
  ];
}
