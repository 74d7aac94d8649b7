import { commonSchedule, TREATMENTS } from '../decide/index.ts';
import type {
  Cell,
  Decision,
  FacadeVerdict,
  Others,
  Reference,
  SetFindings,
  Treatment,
} from '../decide/index.ts';
import type { Project } from '../project/index.ts';
import { describeSchedule } from '../schedule/index.ts';
import { compassWord } from './compass.ts';
import type { Table } from './table.ts';

const TREATMENT_WORDS: Record<Treatment, string> = {
  planned: 'as planned',
  external: 'external blinds',
  bare: 'bare',
  screen: 'insect screen',
  internal: 'internal blind',
  between: 'blind between panes',
  externalSlats: 'external slats',
  externalFabric: 'external fabric',
  overhang: 'overhang',
  lowerG: 'glass of lower g',
  nightAiring: 'night airing',
};

const OTHERS_WORDS: Record<Reference, string> = {
  planned: 'all else as planned',
  smallestSet: 'the smallest set of external blinds elsewhere',
  allExternal: 'external blinds everywhere else',
};

/** The verdict on a facade in a few words: `needs an external blind`. */
export function verdictWords({ kind, enough }: FacadeVerdict): string {
  switch (kind) {
    case 'needs':
      return 'needs an external blind';
    case 'cheaper':
      return enough === 'planned'
        ? 'no external blind: what is planned is enough'
        : `no external blind: ${TREATMENT_WORDS[enough!]} is enough`;
    case 'better':
      return 'better with, not needed';
    case 'none':
      return 'no blind';
    case 'notEnough':
      return 'better with, but not enough';
  }
}

/** Why, in one sentence with its figures. */
export function verdictReason(verdict: FacadeVerdict, project: Project): string {
  const { kind, bare, external, others, cheaper, enough } = verdict;
  const rooms = verdict.rooms.map((id) => project.rooms.find((r) => r.id === id)!.name).join(', ');
  const asIs = `With this facade bare and ${OTHERS_WORDS[others]}, ${rooms}: ${held(bare)}`;
  const blinds = `with external blinds here ${held(external)}`;
  const enoughCell = cheaper.find((c) => c.treatment === enough)?.cell;
  const tried = cheaper.map((c) => `${TREATMENT_WORDS[c.treatment]} ${c.cell.hours}`).join(', ');
  switch (kind) {
    case 'needs': {
      const rest = tried ? `; nothing cheaper alone keeps it (${tried})` : '';
      return `${asIs}, ${blinds}${rest}.`;
    }
    case 'cheaper':
      return `${asIs}, ${instead(enough!)} ${held(enoughCell!)}; ${blinds}.`;
    case 'better':
      return `${asIs}; external blinds would save ${counted(bare.hours - external.hours, 'hour')}.`;
    case 'none':
      return `${asIs}; external blinds would save ${counted(Math.max(bare.hours - external.hours, 0), 'hour')}.`;
    case 'notEnough':
      return `${asIs}, ${blinds}: more than blinds is needed.`;
  }
}

function instead(treatment: Treatment): string {
  return treatment === 'planned' ? 'as planned here' : `with ${TREATMENT_WORDS[treatment]}`;
}

function held({ hours, kept }: Cell): string {
  return `${hours} hours over, criterion ${kept ? 'kept' : 'broken'}`;
}

/** One line a facade: name, verdict and reason; then what holds for all of them. */
export function verdictLines(decision: Decision, project: Project): string[] {
  const lines = decision.verdicts.map(
    (verdict) =>
      `${facadeName(project, verdict.facade)}: ${verdictWords(verdict)}. ${verdictReason(verdict, project)}`,
  );
  return [...lines, ...setLines(decision.sets, project), ...togetherLine(decision)];
}

/** The smallest set of external blinds in sentences. */
export function setLines(sets: SetFindings, project: Project): string[] {
  const { smallest, exact, leastCost, front } = sets;
  if (!smallest) {
    const all = front.at(-1)!;
    return [
      `No set of external blinds is ${exact ? '' : 'found that is '}enough: with all of them ` +
        `${counted(all.broken, 'room')} still broken, ${all.hours} hours over.`,
    ];
  }
  const names = smallest.openings.map((id) => project.openings.find((o) => o.id === id)!.name);
  const which = names.length ? `: ${names.join(', ')}` : '';
  const proof = exact
    ? 'proven to be the fewest or cheapest'
    : `not proven: no set can cost less than ${figure(leastCost)}`;
  return [
    `Smallest set of external blinds that keeps every room within its criterion, other shading as ` +
      `planned: ${counted(names.length, 'opening')}${which}; ${smallest.hours} hours over ` +
      `(cost ${figure(smallest.cost)}, ${proof}).`,
  ];
}

/** Facades are judged one at a time; said where leaving all of them bare would not do. */
function togetherLine({ verdicts, sets }: Decision): string[] {
  const needed = verdicts.some((v) => v.kind === 'needs');
  if (needed || !sets.smallest || sets.smallest.openings.length === 0) return [];
  return [
    'Each facade is judged with the others as they are: that none needs an external blind by ' +
      'itself does not mean that all can go without.',
  ];
}

/** What the blind of each opening does as the first and as the last one. */
export function firstLastTable(decision: Decision, project: Project): Table {
  const names = new Map(project.openings.map((o) => [o.id, o.name]));
  return {
    title:
      'Each blind by itself: hours over saved as the only blind and as the last one, kWh kept out ' +
      '(as the last one)',
    columns: [
      { head: 'Opening', align: 'left' },
      { head: 'Blind', align: 'left' },
      ...heads(
        'Saved first',
        'Saved last',
        'Summer stopped',
        'Winter lost',
        'Heating lost',
        'Moves a day',
        'Daylight h down',
        'View h lost',
      ),
    ],
    rows: decision.openings.map((o) => [
      names.get(o.id)!,
      o.blind === 'planned' ? 'planned' : 'stock external',
      String(o.hoursSavedFirst),
      String(o.hoursSavedLast),
      whole(o.summerStopped),
      whole(o.winterLost),
      whole(o.usefulLost),
      o.movesPerDay.toFixed(1),
      whole(o.daylightHoursLowered),
      whole(o.viewHoursLost),
    ]),
  };
}

/** Facade by measure, all other facades bare or as planned. */
export function matrixTable(decision: Decision, project: Project, others: Others): Table {
  return {
    title:
      `One facade treated, all others ${others === 'bare' ? 'bare' : 'as planned'}: hours over and ` +
      'heating of the rooms behind it, kWh of sun through it',
    columns: [
      { head: 'Facade', align: 'left' },
      { head: 'Measure', align: 'left' },
      ...heads('Hours over', 'Criterion', 'Summer gain', 'Winter lost', 'Heating', 'View h lost'),
    ],
    rows: decision.matrix.flatMap(({ facade, cells }) =>
      TREATMENTS.flatMap((treatment) => {
        const cell = cells[others][treatment];
        if (!cell) return [];
        return [
          [
            treatment === TREATMENTS[0] ? facadeName(project, facade) : '',
            TREATMENT_WORDS[treatment],
            String(cell.hours),
            cell.kept ? 'kept' : 'broken',
            whole(cell.summerGain),
            whole(cell.winterLost),
            whole(cell.heatingKWh),
            whole(cell.viewHoursLost),
          ],
        ];
      }),
    ),
  };
}

/** Best set of external blinds by number. */
export function frontTable({ sets }: Decision, project: Project): Table {
  const names = new Map(project.openings.map((o) => [o.id, o.name]));
  return {
    title: `Best external blinds by number${sets.exact ? '' : ' (one after another, not proven)'}`,
    columns: [...heads('Blinds', 'Hours over', 'Rooms broken'), { head: 'Where', align: 'left' }],
    rows: sets.front.map((set) => [
      String(set.openings.length),
      String(set.hours),
      String(set.broken),
      set.openings.map((id) => names.get(id)!).join(', '),
    ]),
  };
}

/** What the measures mean and how the search was made, in sentences. */
export function decideNotes(decision: Decision): string[] {
  const { sets, hemisphere, overhangDepth } = decision;
  const { creep } = sets;
  const harm =
    creep.broken + creep.hours > 0
      ? `One more blind was seen to add up to ${counted(creep.hours, 'hour')} (it slows the ` +
        'airing); the search allowed for that.'
      : 'One more blind was never seen to add hours.';
  return [
    `Hours over and the criterion: ${decision.criterion}.`,
    `A measure stands alone on its facade, without other blinds or screens there; an overhang is ` +
      `${overhangDepth} m deep; night airing tilts the sashes of that facade.`,
    'Blinds that a measure adds follow one schedule (common practice):',
    ...describeSchedule(commonSchedule(hemisphere)).map((line) => `  ${line}`),
    `${sets.evaluations} of ${sets.possible} sets of external blinds were run. ${harm}`,
  ];
}

export function facadeName(project: Project, id: string): string {
  const { name, azimuth } = project.walls.find((w) => w.id === id)!;
  return `${name} (${compassWord(azimuth)} ${Math.round(azimuth)}°)`;
}

function heads(...names: string[]): Table['columns'] {
  return names.map((head) => ({ head, align: 'right' as const }));
}

function whole(value: number): string {
  const rounded = Math.round(value);
  return String(rounded === 0 ? 0 : rounded);
}

function figure(value: number): string {
  return String(Number(value.toFixed(2)));
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}
