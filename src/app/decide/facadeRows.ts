import type { FacadeVerdict } from '../../../lib/decide/index.ts';
import type { DecisionAnswer } from '../state/decision.svelte.ts';
import { compassText, wallName } from './text.ts';
import type { Tongue } from './text.ts';

/** A facade in the table of verdicts. */
export interface FacadeRow {
  facade: string;
  name: string;
  compass: string;
  verdict: FacadeVerdict;
  /** Hours over with the whole house as planned. */
  planned?: number;
  /** Sun that external blinds keep out in summer, against the bare facade, kWh. */
  summerOut: number;
}

export function facadeRows(
  words: Tongue,
  { decision, project }: Pick<DecisionAnswer, 'decision' | 'project'>,
): FacadeRow[] {
  return decision.verdicts.map((verdict) => {
    const { facade, bare, external } = verdict;
    const wall = project.walls.find((w) => w.id === facade);
    const cells = decision.matrix.find((row) => row.facade === facade)?.cells;
    return {
      facade,
      name: wallName(project, facade),
      compass: wall ? compassText(words, wall.azimuth) : '',
      verdict,
      planned: cells?.planned.planned?.hours,
      summerOut: bare.summerGain - external.summerGain,
    };
  });
}
