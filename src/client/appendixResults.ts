import { TREATMENTS } from '../../lib/decide/index.ts';
import type { Table } from '../../lib/findings/index.ts';
import type { OpeningSummary } from '../worker/api.ts';
import { measureText } from './answer.ts';
import { openingOf, wallOf } from './facts.ts';
import type { PageFacts } from './facts.ts';
import { criterionFigure, criterionTitle } from './hours.ts';
import { column } from './tables.ts';
import type { Teller } from './teller.ts';

/** Every criterion of each room without and with shading. */
export function criteriaTables(facts: PageFacts, teller: Teller): Table[] {
  const { t } = teller;
  const judged = (c: PageFacts['study']['rooms'][number]['with']['chosen']) => {
    const figure = criterionFigure(c, c.value, teller);
    return c.met === undefined ? figure : `${figure} ${t(c.met ? 'facade.kept' : 'facade.broken')}`;
  };
  return facts.study.rooms.map((room) => ({
    title: t('appendix.criteria', { room: room.name }),
    columns: [
      column(t('in.criterion')),
      column(t('in.limit'), 'right'),
      column(t('in.without'), 'right'),
      column(t('in.with'), 'right'),
      column(t('in.source')),
    ],
    rows: room.with.criteria.map((c, i) => [
      criterionTitle(c, facts, teller),
      c.limit === undefined ? '–' : criterionFigure(c, c.limit, teller),
      judged(room.without.criteria[i]!),
      judged(c),
      t(`criterionSource.${c.id}`),
    ]),
  }));
}

/** Each blind by itself, each facade by measure, and the best sets by number. */
export function decisionTables(facts: PageFacts, teller: Teller): Table[] {
  const { t, words } = teller;
  const { decision } = facts;
  const energy = (value: number) => teller.bare('energy', value);
  const kWh = teller.unit('energy');
  const own: Table = {
    title: t('appendix.blinds', { unit: kWh }),
    columns: [
      column(t('in.opening')),
      column(t('in.blind')),
      ...(
        [
          'savedFirst',
          'savedLast',
          'summerStopped',
          'winterLost',
          'heatingLost',
          'movesADay',
          'viewLost',
        ] as const
      ).map((key) => column(t(`in.${key}`), 'right')),
    ],
    rows: decision.openings.map((o) => [
      openingOf(facts, o.id).name,
      t(o.blind === 'planned' ? 'in.planned' : 'in.stock'),
      teller.number(o.hoursSavedFirst),
      teller.number(o.hoursSavedLast),
      energy(o.summerStopped),
      energy(o.winterLost),
      energy(o.usefulLost),
      teller.number(o.movesPerDay, 1),
      teller.number(o.viewHoursLost),
    ]),
  };
  const matrix: Table = {
    title: t('appendix.measures', { unit: kWh }),
    columns: [
      column(t('facade.facade')),
      column(t('in.measure')),
      ...(['hoursOver', 'summerGain', 'winterLost', 'heatingNeed'] as const).map((key) =>
        column(t(`in.${key}`), 'right'),
      ),
    ],
    rows: decision.matrix.flatMap(({ facade, cells }) =>
      TREATMENTS.flatMap((treatment) => {
        const cell = cells.planned[treatment];
        if (!cell) return [];
        return [
          [
            wallOf(facts, facade).name,
            measureText(treatment, teller),
            `${teller.number(cell.hours)} ${t(cell.kept ? 'facade.kept' : 'facade.broken')}`,
            energy(cell.summerGain),
            energy(cell.winterLost),
            energy(cell.heatingKWh),
          ],
        ];
      }),
    ),
  };
  const front: Table = {
    title: t(decision.sets.exact ? 'appendix.front' : 'appendix.frontGreedy'),
    columns: [
      column(t('in.number'), 'right'),
      column(t('in.hoursOver'), 'right'),
      column(t('in.roomsBroken'), 'right'),
      column(t('in.where')),
    ],
    rows: decision.sets.front.map((set) => [
      teller.number(set.openings.length),
      teller.number(set.hours),
      teller.number(set.broken),
      words.list(set.openings.map((id) => openingOf(facts, id).name)) || '–',
    ]),
  };
  return [front, own, matrix];
}

/** Months of each opening: incident, on the glass, gain without and with shading. */
export function monthTables({ study }: PageFacts, teller: Teller): Table[] {
  const { t, words } = teller;
  const rows = (name: string, sums: OpeningSummary['sums']): string[][] =>
    (['incident', 'sunlit', 'without', 'with'] as const).map((key, i) => [
      i === 0 ? name : '',
      t(`quantity.${key}`),
      ...sums[key].months.map((v) => teller.bare('energy', v)),
      teller.bare('energy', sums[key].year),
    ]);
  return [
    {
      title: t('appendix.months', { unit: teller.unit('energy') }),
      columns: [
        column(t('in.opening')),
        column(''),
        ...words.months().map((m) => column(m, 'right')),
        column(t('in.year'), 'right'),
      ],
      rows: [
        ...study.openings.flatMap((o) => rows(o.name, o.sums)),
        ...rows(t('in.house'), study.total),
      ],
    },
  ];
}
