import { fromSI, formatQuantity, unitOf } from '../../../../lib/units/index.ts';
import type { UnitSystem } from '../../../../lib/units/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';
import { figure, percent } from '../words.ts';
import type { CutHandle } from './handles.ts';
import type { SunOnPlane } from './rays.ts';
import type { CutSubject } from './shapes.ts';

export interface CutFacts {
  subject: CutSubject;
  units: UnitSystem;
  /** Date and clock of the chosen hour, and where the sun stands. */
  when: string;
  sunText: string;
  sun?: SunOnPlane;
  share?: number;
  /** The blind as it stands; absent where there is none. */
  blindText?: string;
  screenText?: string;
}

/** What the sections show, in a few sentences. */
export function describeCut(facts: CutFacts): string {
  const { subject, units } = facts;
  const { opening, panes, thickness } = subject;
  const length = (metres: number) => formatQuantity('length', metres, units);
  const overhang = opening.overhang
    ? `, an overhang of ${length(opening.overhang.projection)}`
    : '';
  const fins = [opening.finLeft && 'left', opening.finRight && 'right'].filter(Boolean);
  const beside = fins.length
    ? `, ${fins.length > 1 ? 'fins left and right' : `a fin on the ${fins[0]}`}`
    : '';
  return (
    `${opening.name}, ${length(opening.width)} wide and ${length(opening.height)} high, in a wall ` +
    `${length(thickness)} thick: ${panes} ${panes === 1 ? 'pane' : 'panes'} set back ` +
    `${length(opening.setBack)}${overhang}${beside}. ${sunSentence(facts)}`
  );
}

/** The sun and the blind at the chosen hour. */
export function sunSentence(facts: CutFacts): string {
  const { when, sunText, sun, share, blindText, screenText } = facts;
  const rest = [blindText ? `Blind: ${blindText}.` : '', screenText ? `${screenText}.` : ''].filter(
    Boolean,
  );
  return [`${when}: ${sunText}${onPlane(sun, share)}.`, ...rest].join(' ');
}

function onPlane(sun: SunOnPlane | undefined, share: number | undefined): string {
  if (!sun || share === undefined) return '; no direct sun on this opening';
  const side = sun.sideways > 0 ? 'from the right' : 'from the left';
  const turn =
    Math.abs(sun.sideways) < 0.5 ? 'square on' : `${figure(Math.abs(sun.sideways))}° ${side}`;
  return `; profile angle ${figure(sun.profile)}°, ${turn}; it reaches ${percent(share)} of the glass`;
}

/** The dimensions behind the sections. */
export function cutTable(handles: readonly CutHandle[], units: UnitSystem): FigureTable {
  const { symbol } = unitOf('length', units);
  return {
    columns: [{ head: 'Dimension' }, { head: `Length, ${symbol}`, digits: 3 }],
    rowCount: handles.length,
    cell: (row, column) =>
      column === 0 ? handles[row].label : fromSI('length', units, handles[row].value),
  };
}
