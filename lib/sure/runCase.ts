import { gainOfOpenings, roomFigures, verdictKind } from '../decide/index.ts';
import type { RoomFigures, Treatment, VerdictKind } from '../decide/index.ts';
import type { Project } from '../project/index.ts';
import type { TypicalYear } from '../climate/index.ts';
import type { Engine, StudyResult } from '../study/index.ts';
import type { SureCase } from './cases.ts';
import { forgetful } from './forgetful.ts';
import type { FacadeQuestion, SureQuestion } from './question.ts';
import { inCase } from './tolerance.ts';
import { yearOfCase } from './weather.ts';

/** Figures of a facade, or of the whole house, in one case. */
export interface CaseFigures extends RoomFigures {
  /** Sun that comes in over summer, kWh. */
  summerGain: number;
  /** Sun in winter that is kept out, kWh. */
  winterLost: number;
}

/** One facade in one case. */
export interface FacadeCase {
  facade: string;
  kind: VerdictKind;
  /** Cheaper treatment that keeps the criterion here. */
  enough?: Treatment;
  bare: CaseFigures;
  external: CaseFigures;
}

/** What one case came to; plain data. */
export interface CaseResult {
  id: string;
  rooms: { id: string; hours: number; value: number; kept: boolean }[];
  /** The house as planned; winter sun lost against no screen or blind at all. */
  house: CaseFigures;
  facades: FacadeCase[];
}

/**
 * Runs the house in one case: as planned, and each facade bare and with external blinds, so that its
 * verdict is made again. Hangs on nothing but its arguments; the engine only saves time.
 *
 * @param year the case's year, where it is at hand (`yearOfCase`)
 */
export function runCase(
  question: SureQuestion,
  circumstances: SureCase,
  engine: Engine,
  year: TypicalYear = yearOfCase(question.weather, circumstances),
): CaseResult {
  const { library, project } = question;
  const run = (plan: Project): StudyResult => {
    const same = circumstances.forgetful ? forgetful(plan, library, circumstances.seed ?? 0) : plan;
    return engine.run({ ...inCase(same, library, circumstances), year });
  };
  const planned = run(project);
  return {
    id: circumstances.id,
    rooms: planned.rooms.map(({ id, with: { chosen } }) => ({
      id,
      hours: chosen.hoursOver,
      value: chosen.value,
      kept: chosen.met !== false,
    })),
    house: {
      ...roomFigures(planned, new Set(project.rooms.map((r) => r.id))),
      summerGain: planned.total.with.summer,
      winterLost: planned.total.without.winter - planned.total.with.winter,
    },
    facades: question.facades.map((facade) => facadeCase(facade, run)),
  };
}

function facadeCase(facade: FacadeQuestion, run: (plan: Project) => StudyResult): FacadeCase {
  const rooms = new Set(facade.rooms);
  const openings = new Set(facade.openings);
  const bareYear = run(facade.bare);
  const winter = gainOfOpenings(bareYear, openings, 'winter');
  const figures = (result: StudyResult): CaseFigures => ({
    ...roomFigures(result, rooms),
    summerGain: gainOfOpenings(result, openings, 'summer'),
    winterLost: winter - gainOfOpenings(result, openings, 'winter'),
  });
  const bare = figures(bareYear);
  const external = figures(run(facade.external));
  const enough = bare.kept
    ? undefined
    : facade.cheaper.find(({ project }) => roomFigures(run(project), rooms).kept)?.treatment;
  return {
    facade: facade.facade,
    kind: verdictKind(bare, external, enough),
    ...(enough === undefined ? {} : { enough }),
    bare,
    external,
  };
}
