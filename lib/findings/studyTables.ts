import type { FacadeResult, GainSums, OpeningResult, StudyResult } from '../study/index.ts';
import { shareStopped } from '../study/index.ts';
import type { Peak } from '../study/index.ts';
import { compassWord } from './compass.ts';
import type { Table } from './table.ts';

/** One line of a study's tables: an opening, a facade or the whole house. */
interface Line {
  label: string;
  glassArea: number;
  sums: GainSums;
  peakWithout?: Peak;
  peakWith?: Peak;
}

/** Facades with their openings below them, then the house. */
function linesOf(result: StudyResult): Line[] {
  const openings = new Map(result.openings.map((o) => [o.id, o]));
  const lines = result.facades.flatMap((facade): Line[] => [
    facadeLine(facade),
    ...facade.openings.map((id) => openingLine(openings.get(id)!)),
  ]);
  const glassArea = result.openings.reduce((area, o) => area + o.glassArea, 0);
  return [...lines, { label: 'House', glassArea, sums: result.total }];
}

function facadeLine(facade: FacadeResult): Line {
  const { azimuth, tilt } = facade.plane;
  const facing = `${compassWord(azimuth)} ${Math.round(azimuth)}°`;
  const lean = tilt === 90 ? '' : `, tilt ${Math.round(tilt)}°`;
  return { ...facade, label: `${facade.name} (${facing}${lean})` };
}

function openingLine(opening: OpeningResult): Line {
  const count = opening.count > 1 ? ` x ${opening.count}` : '';
  return { ...opening, label: `  ${opening.name}${count}` };
}

const SPANS = { year: 'Year', summer: 'Summer', winter: 'Winter' } as const;

/** Sums of the year, the summer or the winter: one row an opening, grouped by facade. */
export function sumsTable(result: StudyResult, span: keyof typeof SPANS): Table {
  return {
    title: `${SPANS[span]}${spanNote(result, span)}: kWh`,
    columns: [
      { head: 'Facade / opening', align: 'left' },
      { head: 'Glass m2', align: 'right' },
      { head: 'Incident', align: 'right' },
      { head: 'Sunlit', align: 'right' },
      { head: 'Gain without', align: 'right' },
      { head: 'Gain with', align: 'right' },
      { head: 'Stopped', align: 'right' },
    ],
    rows: linesOf(result).map(({ label, glassArea, sums }) => [
      label,
      glassArea.toFixed(2),
      whole(sums.incident[span]),
      whole(sums.sunlit[span]),
      whole(sums.without[span]),
      whole(sums.with[span]),
      percent(shareStopped(sums.without[span], sums.with[span])),
    ]),
  };
}

function spanNote(result: StudyResult, span: keyof typeof SPANS): string {
  if (span === 'year') return '';
  const warmNorth = (span === 'summer') === result.place.latitude >= 0;
  return warmNorth ? ' (June to August)' : ' (December to February)';
}

/** Strongest hour of each opening and facade, without and with shading. */
export function peaksTable(result: StudyResult): Table {
  return {
    title: 'Strongest hour: W per m2 of glass, local clock at the start of the hour',
    columns: [
      { head: 'Facade / opening', align: 'left' },
      { head: 'Without', align: 'right' },
      { head: 'at', align: 'left' },
      { head: 'With', align: 'right' },
      { head: 'at', align: 'left' },
    ],
    rows: linesOf(result).flatMap(({ label, peakWithout, peakWith }) =>
      peakWithout && peakWith
        ? [
            [
              label,
              whole(peakWithout.value),
              when(peakWithout),
              whole(peakWith.value),
              when(peakWith),
            ],
          ]
        : [],
    ),
  };
}

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
const QUANTITIES = [
  ['incident', 'incident'],
  ['sunlit', 'sunlit'],
  ['without', 'gain without'],
  ['with', 'gain with'],
] as const;

/** Monthly sums of all four quantities. */
export function monthsTable(result: StudyResult): Table {
  return {
    title: 'Months: kWh',
    columns: [
      { head: 'Facade / opening', align: 'left' },
      { head: '', align: 'left' },
      ...MONTHS.map((head) => ({ head, align: 'right' as const })),
    ],
    rows: linesOf(result).flatMap(({ label, sums }) =>
      QUANTITIES.map(([key, word], i) => [
        i === 0 ? label : '',
        word,
        ...sums[key].months.map(whole),
      ]),
    ),
  };
}

function when(peak: Peak): string {
  return `${peak.date.slice(5)} ${peak.clock}`;
}

function whole(value: number): string {
  return Math.round(value).toString();
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
