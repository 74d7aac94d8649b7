import { neededOpenings } from './answer.ts';
import type { PageFacts } from './facts.ts';
import { openingOf } from './facts.ts';
import type { Teller } from './teller.ts';

/** What the shading takes away, in engine units. */
export interface Costs {
  /** Whether the blinds are those planned, or those of the answer. */
  of: 'planned' | 'answer';
  /** Winter sun that stays outside, kWh, and all of it that bare glass lets in. */
  winterLost: number;
  winterAll: number;
  /** Heat that must make up for it in the year, kWh. */
  heatingMore: number;
  /** Hours a year with a blind down by day and somebody in, mean over the glass with blinds. */
  viewHours: number;
  /** Moves a day in the months in which the blinds move, mean over them. */
  movesPerDay: number;
}

/**
 * The price of the shading: of what is planned, or, where no blind is planned, of the answer's
 * blinds. Undefined where there is none of either.
 */
export function costsOf(facts: PageFacts): Costs | undefined {
  const { project, study, decision } = facts;
  const planned = project.openings.filter((o) => o.blind).map((o) => o.id);
  const own = new Set(planned.length > 0 ? planned : neededOpenings(facts));
  if (own.size === 0) return undefined;
  const figures = decision.openings.filter((o) => own.has(o.id));
  const sum = (pick: (o: (typeof figures)[number]) => number) =>
    figures.reduce((total, o) => total + pick(o), 0);
  const glass = (id: string) => study.openings.find((o) => o.id === id)!.glassArea;
  const area = sum((o) => glass(o.id));
  const { without, with: shaded } = study.total;
  const heating = study.rooms.reduce((s, r) => s + r.with.heatingKWh - r.without.heatingKWh, 0);
  const isPlanned = planned.length > 0;
  return {
    of: isPlanned ? 'planned' : 'answer',
    winterLost: isPlanned ? without.winter - shaded.winter : sum((o) => o.winterLost),
    winterAll: without.winter,
    heatingMore: isPlanned ? heating : sum((o) => o.usefulLost),
    viewHours: area > 0 ? sum((o) => glass(o.id) * o.viewHoursLost) / area : 0,
    movesPerDay: sum((o) => o.movesPerDay) / figures.length,
  };
}

/** A cost as the page says it: a figure and what it means. */
export interface CostText {
  figure: string;
  text: string;
}

export function costTexts(facts: PageFacts, costs: Costs, teller: Teller): CostText[] {
  const { t, words } = teller;
  const share = costs.winterAll > 0 ? costs.winterLost / costs.winterAll : 0;
  const months = t(facts.study.place.latitude < 0 ? 'costs.winterSouth' : 'costs.winterNorth');
  return [
    {
      figure: teller.quantity('energy', costs.winterLost),
      text: t('costs.winter', {
        share: words.percent(share),
        months,
        heating: teller.quantity('energy', Math.max(0, costs.heatingMore)),
      }),
    },
    { figure: teller.hours(Math.round(costs.viewHours)), text: t('costs.view') },
    { figure: teller.number(costs.movesPerDay, 1), text: t('costs.moves') },
  ];
}

/** Openings that are an escape route and have, or are to get, a blind. */
export function escapeRoutes(facts: PageFacts): string[] {
  const needed = new Set(neededOpenings(facts));
  return facts.project.openings
    .filter((o) => o.escapeRoute && (o.blind ?? (needed.has(o.id) || o.insectScreen)))
    .map((o) => openingOf(facts, o.id).name);
}
