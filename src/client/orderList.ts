import { plannedExternal } from '../../lib/decide/index.ts';
import type { Blind } from '../../lib/blind/index.ts';
import type { Table } from '../../lib/findings/index.ts';
import type { ProjectOpening } from '../../lib/project/index.ts';
import { answerHouse, neededOpenings, openingAnswers } from './answer.ts';
import type { Need } from './answer.ts';
import { windLimit } from './card.ts';
import { DRIVE, driveCheck } from './drive.ts';
import type { DriveCheck } from './drive.ts';
import { blindOf, wallOf } from './facts.ts';
import type { PageFacts } from './facts.ts';
import type { Teller } from './teller.ts';

/** One blind to order. */
export interface OrderItem {
  opening: ProjectOpening;
  azimuth: number;
  blind: Blind;
  /** In the project, or a usual kind that the answer adds. */
  from: 'planned' | 'answer';
  need: Need;
  group?: { name: string; channel: number };
  /** m/s. */
  windLimit?: number;
  movesPerDay: number;
  drive: DriveCheck;
}

/** Blinds planned, and those that the answer adds, in the order of the project. */
export function orderItems(facts: PageFacts): OrderItem[] {
  const { project, decision, study } = facts;
  const planned = plannedExternal(project, facts);
  const added = new Set(neededOpenings(facts).filter((id) => !planned.has(id)));
  const house = answerHouse(facts);
  const needs = new Map(openingAnswers(facts).map((a) => [a.id, a.need]));
  return project.openings.flatMap((opening): OrderItem[] => {
    const wall = wallOf(facts, opening.wall);
    const isAdded = added.has(opening.id);
    const id = (isAdded ? house.openings.find((o) => o.id === opening.id)! : opening).blind?.blind;
    const blind = id === undefined ? undefined : blindOf(facts, id);
    if (!blind) return [];
    const movesPerDay = decision.openings.find((o) => o.id === opening.id)?.movesPerDay ?? 0;
    const summary = study.openings.find((o) => o.id === opening.id)!;
    const group = isAdded ? undefined : project.groups.find((g) => g.id === opening.blind?.group);
    return [
      {
        opening,
        azimuth: wall.azimuth,
        blind,
        from: isAdded ? 'answer' : 'planned',
        need: needs.get(opening.id)!,
        ...(group ? { group: { name: group.name, channel: group.channel } } : {}),
        windLimit: isAdded ? blind.windLimit : windLimit(facts, opening),
        movesPerDay,
        drive: driveCheck(summary, movesPerDay),
      },
    ];
  });
}

/** The order list of blinds and of insect screens as printed tables. */
export interface OrderList {
  title: string;
  about: string;
  tables: Table[];
  notes: string[];
}

export function orderList(facts: PageFacts, teller: Teller): OrderList {
  const { t, words } = teller;
  const items = orderItems(facts);
  const figures = {
    panel: teller.number(DRIVE.panel),
    share: words.percent(DRIVE.efficiency),
    move: teller.number(DRIVE.perMove, 2),
    standby: teller.number(DRIVE.standby, 1),
  };
  return {
    title: t('order.title'),
    about: t('order.about'),
    tables: [blindTable(items, teller), ...screenTable(facts, teller)],
    notes: [
      t('order.measure'),
      t('order.drive', figures),
      t('order.windNote'),
      ...(items.some((i) => i.from === 'answer') ? [t('order.addedNote')] : []),
    ],
  };
}

function blindTable(items: readonly OrderItem[], teller: Teller): Table {
  const { t } = teller;
  return {
    title: t('order.blinds'),
    columns: [
      { head: t('order.opening'), align: 'left' },
      { head: t('order.size'), align: 'left' },
      { head: t('order.pieces'), align: 'right' },
      { head: t('order.kind'), align: 'left' },
      { head: t('order.group'), align: 'left' },
      { head: t('order.wind'), align: 'right' },
      { head: t('order.power'), align: 'left' },
    ],
    rows: items.map((item) => [
      `${item.opening.name} (${teller.facing(item.azimuth)})`,
      teller.size(item.opening.width, item.opening.height),
      teller.number(item.opening.count),
      `${blindName(item.blind, teller)}${item.from === 'answer' ? ` ${t('order.added')}` : ''}${
        item.need === 'plannedExternal' ? ` ${t('order.optional')}` : ''
      }`,
      groupText(item, teller),
      item.windLimit === undefined ? '–' : teller.quantity('windSpeed', item.windLimit),
      powerText(item, teller),
    ]),
  };
}

function groupText({ group }: OrderItem, { t }: Teller): string {
  return group ? t('card.channel', { channel: group.channel, name: group.name }) : t('order.alone');
}

export function powerText({ drive, blind, movesPerDay }: OrderItem, teller: Teller): string {
  const { t, words } = teller;
  if (blind.position !== 'external') return t('order.noDrive');
  return t(`order.${drive.verdict}`, {
    month: words.months('long')[drive.month],
    gathered: teller.number(drive.gathered, 1),
    needed: teller.number(drive.needed, 1),
    moves: teller.number(movesPerDay, 1),
  });
}

export function blindName({ id, name }: Blind, teller: Teller): string {
  return teller.named('blind', id, name);
}

function screenTable(facts: PageFacts, teller: Teller): Table[] {
  const { t, words } = teller;
  const screened = facts.project.openings.filter((o) => o.insectScreen);
  if (screened.length === 0) return [];
  return [
    {
      title: t('order.screens'),
      columns: [
        { head: t('order.opening'), align: 'left' },
        { head: t('order.size'), align: 'left' },
        { head: t('order.pieces'), align: 'right' },
        { head: t('order.kind'), align: 'left' },
        { head: t('order.covers'), align: 'left' },
        { head: t('order.season'), align: 'left' },
      ],
      rows: screened.map((opening) => {
        const { blind, share, from, to } = opening.insectScreen!;
        const fabric = blindOf(facts, blind);
        return [
          opening.name,
          teller.size(opening.width, opening.height),
          teller.number(opening.count),
          fabric ? blindName(fabric, teller) : blind,
          t(share === 1 ? 'order.whole' : 'order.half'),
          t('order.fromTo', { from: words.day(from), to: words.day(to) }),
        ];
      }),
    },
  ];
}
