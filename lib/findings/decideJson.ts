import type { Decision } from '../decide/index.ts';
import type { Project } from '../project/index.ts';
import { decideNotes, verdictReason, verdictWords } from './decideTables.ts';

/** The decision as plain data for other programs, with its sentences in English. */
export function decideJson(decision: Decision, project: Project): Record<string, unknown> {
  return {
    format: 'shadewright-decision',
    version: 1,
    project: project.name,
    units: { energy: 'kWh', hours: 'h a year', depth: 'm' },
    ...decision,
    warnings: decision.warnings.map(({ english }) => english),
    verdicts: decision.verdicts.map((verdict) => ({
      ...verdict,
      words: verdictWords(verdict),
      reason: verdictReason(verdict, project),
    })),
    notes: decideNotes(decision),
  };
}
