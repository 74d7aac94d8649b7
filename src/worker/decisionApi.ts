import type { Decision, DecideOptions } from '../../lib/decide/index.ts';
import type { Problem } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import type { HourlyFile } from './api.ts';

/** What a decision is asked for. */
export interface DecisionRequest {
  project: Project;
  /** The hourly text the project takes its weather from, where it does. */
  hourly?: HourlyFile;
  options: Pick<DecideOptions, 'prices'>;
}

export type DecisionReply = { ok: true; decision: Decision } | { ok: false; problems: Problem[] };
