import type { Cell, FacadeVerdict, SetFindings } from '../../../lib/decide/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import type { Words } from '../../words/index.ts';
import { compassName } from '../parts/compass.ts';

/** What the sentences need of the words of the page. */
export type Tongue = Pick<Words, 'of' | 'number' | 'list'>;

/** Compass word of an azimuth with its figure: `south-west 225°`. */
export function compassText(words: Tongue, azimuth: number): string {
  return `${compassName(words, azimuth)} ${words.number(azimuth)}°`;
}

export function wallName(project: Project, facade: string): string {
  return project.walls.find((w) => w.id === facade)?.name ?? facade;
}

export function openingNames(project: Project, ids: readonly string[]): string[] {
  return ids.map((id) => project.openings.find((o) => o.id === id)?.name ?? id);
}

export function roomNames(project: Project, ids: readonly string[]): string[] {
  return ids.map((id) => project.rooms.find((r) => r.id === id)?.name ?? id);
}

/** `769 hours over`. */
export function overText(words: Tongue, hours: number): string {
  return words.of('decide')('over', { count: hours, figure: words.number(hours) });
}

/** `769 hours over, limit kept`. */
function heldText(words: Tongue, { hours, kept }: Cell): string {
  const over = overText(words, hours);
  return words.of('decide')(kept ? 'heldKept' : 'heldBroken', { over });
}

/** The verdict on a facade in a few words. */
export function verdictText(
  words: Tongue,
  { kind, enough }: Pick<FacadeVerdict, 'kind' | 'enough'>,
): string {
  const t = words.of('decide');
  if (kind !== 'cheaper') return t(`verdict.${kind}`);
  if (enough === undefined || enough === 'planned') return t('verdict.cheaperPlanned');
  return t('verdict.cheaper', { measure: t(`measure.${enough}`) });
}

/** Why, in one sentence with its figures. */
export function reasonText(words: Tongue, verdict: FacadeVerdict, project: Project): string {
  const t = words.of('decide');
  const { kind, bare, external, cheaper, enough } = verdict;
  const asIs = t('reason.asIs', {
    others: t(`others.${verdict.others}`),
    rooms: words.list(roomNames(project, verdict.rooms)),
    held: heldText(words, bare),
  });
  const given = { asIs, external: heldText(words, external) };
  switch (kind) {
    case 'needs': {
      if (cheaper.length === 0) return t('reason.needs', given);
      const tried = cheaper.map(({ treatment, cell }) =>
        t('reason.tried', {
          measure: t(`measure.${treatment}`),
          figure: words.number(cell.hours),
        }),
      );
      return t('reason.needsTried', { ...given, tried: tried.join(', ') });
    }
    case 'cheaper': {
      const cell = cheaper.find((c) => c.treatment === enough)?.cell ?? external;
      const held = { ...given, enough: heldText(words, cell) };
      if (enough === undefined || enough === 'planned') return t('reason.cheaperPlanned', held);
      return t('reason.cheaper', { ...held, measure: t(`measure.${enough}`) });
    }
    case 'notEnough':
      return t('reason.notEnough', given);
    default: {
      const hours = bare.hours - external.hours;
      if (hours <= 0) return t('reason.noneAtAll', { asIs });
      return t(`reason.${kind}`, { asIs, saved: hoursText(words, hours) });
    }
  }
}

/** `22 hours`. */
export function hoursText(words: Tongue, hours: number): string {
  return words.of('common')('hours', { count: hours, figure: words.number(hours) });
}

/** The smallest set of external blinds in sentences: which, and how it is known. */
export function setTexts(
  words: Tongue,
  sets: SetFindings,
  project: Project,
  priced: boolean,
): string[] {
  const t = words.of('decide');
  const { smallest, exact, front } = sets;
  if (!smallest) {
    const all = front.at(-1)!;
    const rooms = t('sets.roomsBroken', { count: all.broken, figure: words.number(all.broken) });
    return [
      t(exact ? 'sets.none_exact' : 'sets.none_greedy', {
        rooms,
        over: overText(words, all.hours),
      }),
    ];
  }
  const over = overText(words, smallest.hours);
  const count = smallest.openings.length;
  if (count === 0) return [t('sets.zero', { over })];
  const openings = words.list(openingNames(project, smallest.openings));
  return [
    t('sets.smallest', { count, figure: words.number(count), openings, over }),
    exact
      ? t('sets.proven', {
          looked: words.number(sets.evaluations),
          possible: words.number(sets.possible),
        })
      : t('sets.notProven', {
          cost: cost(words, sets.leastCost),
          price: cost(words, smallest.cost),
        }),
    ...(priced ? [t('sets.cost', { cost: cost(words, smallest.cost) })] : []),
  ];
}

/** A price, with cents where there are any. */
export function cost(words: Tongue, value: number): string {
  return words.number(value, Number.isInteger(value) ? 0 : 2);
}
