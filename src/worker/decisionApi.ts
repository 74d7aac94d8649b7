import type { Decision } from '../../lib/decide/index.ts';
import type { Problem } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import type { SearchFindings, SearchTarget } from '../../lib/search/index.ts';
import type { HourlyFile } from './api.ts';

/** A house that something is to be worked out for. */
export interface HouseRequest {
  project: Project;
  /** The hourly text the project takes its weather from, where it does. */
  hourly?: HourlyFile;
}

/** What a schedule is searched for. */
export interface SearchRequest extends HouseRequest {
  target: SearchTarget;
}

/** What was worked out, or why it could not be. */
export type LongReply<T> = { ok: true; result: T } | { ok: false; problems: Problem[] };
export type DecisionReply = LongReply<Decision>;
export type SearchReply = LongReply<SearchFindings>;
