import type { VerdictKind } from '../decide/index.ts';
import type { Project } from '../project/index.ts';
import { BLIND_TOLERANCE, GLASS_TOLERANCE } from '../sure/index.ts';
import type {
  FacadeSure,
  FigureSpreads,
  Interval,
  SchemeFigures,
  Spread,
  SureFindings,
} from '../sure/index.ts';
import { facadeName } from './decideTables.ts';
import type { Table } from './table.ts';

/** Verdicts that are the same but for which cheaper measure it is. */
const KIND_WORDS: Record<VerdictKind, string> = {
  needs: 'needs an external blind',
  cheaper: 'something cheaper is enough',
  better: 'better with, not needed',
  none: 'no blind',
  notEnough: 'better with, but not enough',
};

/** One sentence a facade: its verdict, how many cases agree, and which do not. */
export function sureLines(findings: SureFindings, project: Project): string[] {
  const count = findings.cases.length;
  return findings.facades.map((facade) => {
    const name = facadeName(project, facade.facade);
    const verdict = `${name}: ${KIND_WORDS[facade.kind]}`;
    if (!facade.closeCall) return `${verdict}. Sure: the same in all ${count} cases.`;
    const same = count - facade.flips.length;
    const { needs = 0, notEnough = 0 } = facade.counts;
    const spared = needs + notEnough === 0 ? ' It needs an external blind in none of them.' : '';
    return (
      `${verdict}. Close call: the same in ${same} of ${count} cases; ` +
      `${flipWords(facade)}.${spared}`
    );
  });
}

/** Flips by verdict: `needs an external blind in 2 (year 5, 2 K warmer)`. */
function flipWords({ flips }: FacadeSure): string {
  const kinds = [...new Set(flips.map((f) => f.kind))];
  return kinds
    .map((kind) => {
      const own = flips.filter((f) => f.kind === kind).map((f) => f.words);
      const shown = own.slice(0, MOST_NAMED).join('; ');
      const rest = own.length > MOST_NAMED ? `; ${own.length - MOST_NAMED} more` : '';
      return `${KIND_WORDS[kind]} in ${own.length} (${shown}${rest})`;
    })
    .join(', ');
}

const MOST_NAMED = 3;

/** Agreement and hours over of each facade, bare and with external blinds. */
export function sureTable(findings: SureFindings, project: Project): Table {
  return {
    title:
      'How sure: hours over behind each facade, middle (10 % to 90 %) of the typical years and ' +
      '[least to most] of all cases',
    columns: [
      { head: 'Facade', align: 'left' },
      { head: 'Verdict', align: 'left' },
      { head: 'Same in', align: 'right' },
      { head: 'Bare', align: 'right' },
      { head: 'With external blinds', align: 'right' },
    ],
    rows: findings.facades.map((facade) => [
      facadeName(project, facade.facade),
      KIND_WORDS[facade.kind],
      `${Math.round(100 * facade.agreement)} %`,
      spreadText(facade.bare.hours),
      spreadText(facade.external.hours),
    ]),
  };
}

const FIGURES: readonly [keyof FigureSpreads, string][] = [
  ['hours', 'Hours over, all rooms'],
  ['summerGain', 'Sun in summer, kWh'],
  ['winterLost', 'Winter sun kept out, kWh'],
  ['heatingKWh', 'Heating, kWh'],
];

/** Spread of the figures of the house as planned. */
export function houseSpreadTable({ house }: SureFindings): Table {
  const cells = ({ least, low, median, high, most }: Interval) =>
    [least, low, median, high, most].map(whole);
  return {
    title: 'The house as planned: spread of its figures',
    columns: [
      { head: 'Figure', align: 'left' },
      { head: 'Over', align: 'left' },
      ...['Least', '10 %', 'Middle', '90 %', 'Most'].map((head) => ({
        head,
        align: 'right' as const,
      })),
    ],
    rows: FIGURES.flatMap(([key, words]) => [
      [words, 'typical years', ...cells(house[key].years)],
      ['', 'all cases', ...cells(house[key].all)],
    ]),
  };
}

/** Schemes side by side: a row for each axis, a column for each scheme. */
export function schemesTable(schemes: readonly SchemeFigures[]): Table {
  const row = (words: string, of: (scheme: SchemeFigures) => string) => [words, ...schemes.map(of)];
  const titles = schemes[0]?.criteria.map((c) => c.title) ?? [];
  return {
    title: 'Schemes side by side',
    columns: [
      { head: '', align: 'left' },
      ...schemes.map(({ name }) => ({ head: name, align: 'right' as const })),
    ],
    rows: [
      row('Rooms that break the criterion', (s) => String(s.broken)),
      ...titles.map((title, i) => row(`h over: ${title}`, (s) => whole(s.criteria[i].hours))),
      row('Sun in summer, kWh', (s) => whole(s.summerGain)),
      row('Sun in winter, kWh', (s) => whole(s.winterGain)),
      row('Heating, kWh', (s) => whole(s.heatingKWh)),
      row('Most sun in an hour, W', (s) => whole(s.peakGain)),
      row('View hours lost', (s) => whole(s.viewHoursLost)),
      row('  of occupied daylight hours', (s) => whole(s.viewHours)),
      row('  by the share covered', (s) => whole(s.viewHoursCovered)),
      row('Daylight left, % of floor', (s) => s.daylight.left.toFixed(1)),
      row('  of the bare glass', (s) => s.daylight.bare.toFixed(1)),
      row('Moves a day', (s) => s.movesPerDay.toFixed(1)),
      row('Blinds', (s) => String(s.blinds)),
      row('  of them external', (s) => String(s.externalBlinds)),
    ],
  };
}

/** How the cases and figures are meant, and what is left out. */
export function sureNotes(findings: SureFindings): string[] {
  const years = findings.cases.filter((c) => c.kind === 'plan' || c.kind === 'year').length;
  return [
    `${findings.cases.length} cases: ${years} typical years; years 1 and 2 K warmer and with 5 % ` +
      `more sun; g-value ${percent(GLASS_TOLERANCE)} and light through lowered blinds ` +
      `${percent(BLIND_TOLERANCE)} either way (common practice); hand-moved blinds forgotten on ` +
      'one day in five.',
    '10 % and 90 %: straight lines between the cases in order (type 7 of Hyndman & Fan 1996).',
    'View hours lost: occupied daylight hours with the blind down, mean over the glass, of all ' +
      'there are. Daylight left: glass area times visible transmittance and what blind and screen ' +
      'let through, over the floor area, mean over the same hours.',
    ...findings.leftOut.map((sentence) => `Left out: ${sentence}`),
  ];
}

/** The findings as plain data for other programs, with their sentences. */
export function sureJson(
  findings: SureFindings,
  schemes: readonly SchemeFigures[],
  project: Project,
): Record<string, unknown> {
  return {
    format: 'shadewright-sure',
    version: 1,
    project: project.name,
    units: { energy: 'kWh', hours: 'h a year', peakGain: 'W', daylight: '% of floor' },
    ...findings,
    facades: findings.facades.map((facade, i) => ({
      ...facade,
      words: sureLines(findings, project)[i],
    })),
    schemes,
    notes: sureNotes(findings),
  };
}

function spreadText({ years, all }: Spread): string {
  const { median, low, high } = years;
  return `${whole(median)} (${whole(low)} to ${whole(high)}) [${whole(all.least)} to ${whole(all.most)}]`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}

function whole(value: number): string {
  const rounded = Math.round(value);
  return String(rounded === 0 ? 0 : rounded);
}
