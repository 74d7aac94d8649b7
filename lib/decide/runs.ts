import type { Project } from '../project/index.ts';
import type { Engine, StudyInput, StudyResult } from '../study/index.ts';
import { sunUpSteps } from './figures.ts';
import { hemisphereOf } from './measures.ts';

/** Studies of one house in many variants. */
export interface Runs {
  engine: Engine;
  input: StudyInput;
  /** The house as planned. */
  planned: StudyResult;
  hemisphere: 'north' | 'south';
  /** 1 at the steps with the sun up; STEPS values. */
  sunUp: Uint8Array;
  /** The study of a variant; the engine's kept stages make it cheap. */
  of(project: Project): StudyResult;
}

export function createRuns(engine: Engine, input: StudyInput): Runs {
  const of = (project: Project) => engine.run({ ...input, project });
  const planned = of(input.project);
  const hemisphere = hemisphereOf(planned.place.latitude);
  return { engine, input, planned, hemisphere, sunUp: sunUpSteps(planned), of };
}
