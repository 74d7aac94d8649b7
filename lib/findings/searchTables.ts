import { SEARCH_WEIGHTS, familyWords } from '../search/index.ts';
import type { SearchFigures, SearchFindings, SearchWeights } from '../search/index.ts';
import type { Project } from '../project/index.ts';
import type { Table } from './table.ts';

/** What one search found, words first: the rules to set, then what they come to and against what. */
export function searchLines(findings: SearchFindings): string[] {
  const { found, alwaysUp, ideal, choice, name, planned } = findings;
  const [rule, ...rest] = found.lines;
  const lines = [[rule, ...rest].join('; ') + '.'];
  if (findings.plannedBetter) {
    return [
      `${name}: stays as planned. ${held(planned)}; given up: ${givenUp(planned)}.`,
      `  The best found is no better (${held(found.figures)}): ${lines[0]}`,
    ];
  }
  if (choice === 'alwaysUp') {
    const why = alwaysUp.kept
      ? ' with these blinds up and everything else as planned: no schedule is needed for it. For ' +
        'fewer hours search with a reserve, or set a stricter limit in the project.'
      : ': no schedule that was tried is better.';
    return [...lines, `  ${held(alwaysUp)}${why}`];
  }
  return [
    ...lines,
    `  ${held(found.figures)} (${alwaysUp.hours} hours with the blinds up). Given up: ` +
      `${givenUp(found.figures)}.`,
    `  With hindsight, lowered on ${counted(ideal.days, 'day')}: ${held(ideal.figures)}; given up: ` +
      `${givenUp(ideal.figures)}.`,
  ];
}

/** The best schedule of each kind against the references. */
export function searchTable(findings: SearchFindings): Table {
  const { families, choice, planned, alwaysUp, seasonDown, ideal, name } = findings;
  const row = (label: string, f: SearchFigures, chosen = false) => [
    chosen ? `${label} (best)` : label,
    String(f.hours),
    f.kept ? 'kept' : 'broken',
    whole(f.summerGain),
    whole(f.winterLost),
    whole(f.usefulLost),
    whole(f.viewHoursLost),
    f.movesPerDay.toFixed(1),
    whole(f.moves),
    f.price.toFixed(1),
  ];
  return {
    title: `${name}: schedules and references; hours over of the rooms behind it, kWh of sun through it`,
    columns: [
      { head: 'Schedule', align: 'left' },
      ...[
        'Hours over',
        'Criterion',
        'Summer gain',
        'Winter lost',
        'Heating lost',
        'View h lost',
        'Moves a day',
        'Moves',
        'Price',
      ].map((head) => ({ head, align: 'right' as const })),
    ],
    rows: [
      ...families.map((f) => row(familyWords[f.family], f.figures, f.family === choice)),
      row('with hindsight', ideal.figures),
      row('as planned', planned),
      row('always up', alwaysUp, choice === 'alwaysUp'),
      row('always down in season', seasonDown, choice === 'seasonDown'),
    ],
  };
}

/** The rules of each kind, one line a kind. */
export function familyLines({ families }: SearchFindings): string[] {
  return families.map(
    ({ family, lines, runs, full }) =>
      `${familyWords[family]}: ${lines.join('; ')} (${full ? `all ${runs} run` : `${runs} run`})`,
  );
}

/** What the figures of searches mean, in sentences. */
export function searchNotes(all: readonly SearchFindings[], project: Project): string[] {
  if (all.length === 0) return [];
  const [{ criterion, weights, reserve }] = all;
  const nameOf = (id: string) => project.openings.find((o) => o.id === id)!.name;
  return [
    `Hours over and the criterion: ${criterion}.${reserveWords(reserve)}`,
    'The best schedule keeps the criterion at the lowest price; where none keeps it, the one least ' +
      `beyond it. ${priceWords(weights)}`,
    ...(reserve > 0
      ? []
      : ['A schedule that keeps the criterion may keep it by an hour: a reserve gives a margin.']),
    'With hindsight: its own hours on each day, on the days that save the most hours over for what ' +
      'they give up, knowing the whole year. A reference, not a proof that nothing is better.',
    'Heating lost: heat the rooms need over what they need with these blinds up. Clock times are ' +
      'local times, summer time where it applies. Wind raises blinds before any rule.',
    ...all.flatMap(({ name, stock, ungrouped }) => [
      ...(stock.length > 0
        ? [`${name}: stock external blinds at ${stock.map(nameOf).join(', ')}, which have none.`]
        : []),
      ...ungrouped.map((id) => {
        const group = project.groups.find((g) => g.id === id)!.name;
        return `${name}: taken out of the group ${group}; it needs a channel of its own.`;
      }),
    ]),
  ];
}

/**
 * How the house fares with every schedule found.
 * @param inTurn each was searched with those before it in place, not with the others as planned
 */
export function togetherLine(
  rooms: readonly { hours: number; kept: boolean }[],
  inTurn: boolean,
): string {
  const hours = rooms.reduce((sum, r) => sum + r.hours, 0);
  const broken = rooms.filter((r) => !r.kept).length;
  const outcome = `All of these together: ${counted(hours, 'hour')} over in the house`;
  if (broken === 0) return `${outcome}, the criterion kept in every room.`;
  const brokenIn = `${outcome}, the criterion broken in ${counted(broken, 'room')}`;
  if (inTurn) return `${brokenIn}.`;
  return (
    `${brokenIn}: each was searched with the ` +
    'others as planned. Set the one you want first and search again for the rest.'
  );
}

/** Findings of searches as plain data for other programs, with their sentences in English. */
export function searchJson(
  all: readonly SearchFindings[],
  project: Project,
): Record<string, unknown> {
  return {
    format: 'shadewright-search',
    version: 1,
    project: project.name,
    units: { energy: 'kWh', hours: 'h a year', sun: 'W/m2', temperature: 'C', price: 'view hours' },
    targets: all.map((findings) => ({
      ...findings,
      warnings: findings.warnings.map(({ english }) => english),
      words: searchLines(findings),
    })),
    notes: searchNotes(all, project),
  };
}

/** The price in words with its weights. */
function priceWords(weights: SearchWeights): string {
  const { viewHour, usefulKWh, move, hourOver } = weights;
  const usual = Object.entries(SEARCH_WEIGHTS).every(
    ([key, value]) => weights[key as keyof SearchWeights] === value,
  );
  const over = hourOver > 0 ? `, ${hourOver} an hour over` : '';
  return (
    `Price: ${viewHour} an hour with somebody in, the sun up and the blind down, ${usefulKWh} a kWh ` +
    `of heating lost, ${move} a move${over} (${usual ? 'common practice' : 'your own weights'}).`
  );
}

function reserveWords(reserve: number): string {
  if (reserve === 0) return '';
  return ` Kept means kept with ${Number((100 * reserve).toFixed(1))} % of the limit in hand.`;
}

function held({ hours, kept }: SearchFigures): string {
  return `${counted(hours, 'hour')} over, criterion ${kept ? 'kept' : 'broken'}`;
}

function givenUp({ viewHoursLost, usefulLost, movesPerDay, moves }: SearchFigures): string {
  return (
    `${whole(viewHoursLost)} hours of view, ${whole(Math.max(usefulLost, 0))} kWh of useful sun, ` +
    `${counted(moves, 'move')} (${movesPerDay.toFixed(1)} a day)`
  );
}

function whole(value: number): string {
  const rounded = Math.round(value);
  return String(rounded === 0 ? 0 : rounded);
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}
