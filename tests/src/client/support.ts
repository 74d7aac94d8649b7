import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { TypicalYear } from '../../../lib/climate/index.ts';
import { decide } from '../../../lib/decide/index.ts';
import type { Decision } from '../../../lib/decide/index.ts';
import { checkProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import type { StudyResult } from '../../../lib/study/index.ts';
import { pageFacts } from '../../../src/client/index.ts';
import type { PageFacts } from '../../../src/client/index.ts';
import { stations } from '../../../src/library/climates.ts';
import { blinds, glazings } from '../../../src/library/index.ts';
import { yearOf } from '../../../src/library/year.ts';
import { paneHouse } from '../../lib/decide/support.ts';

export const library = { blinds, glazings, stations };

/** A house with its study, its decision and what the page is made from. */
export interface Case {
  project: Project;
  year: TypicalYear;
  result: StudyResult;
  decision: Decision;
  facts: PageFacts;
}

export function caseOf(project: Project): Case {
  const year = yearOf(project, stations);
  const result = createEngine().run({ project, library, year });
  const decision = decide({ project, library, year });
  const normals = stations.find(
    (s) => project.climate.kind === 'station' && s.id === project.climate.station,
  )?.normals;
  const given = { project, decision, glazings, blinds, ...(normals ? { normals } : {}) };
  const facts = pageFacts(
    { ...given, fileName: 'house.shadewright.json', date: new Date(Date.UTC(2026, 4, 1, 12)) },
    result,
    year,
  );
  return { project, year, result, decision, facts };
}

/** A west pane with an external blind, an east pane with none, a small north pane. */
export function smallHouse(): Project {
  const west = { azimuth: 270, width: 3, height: 2, blind: 'external-screen-zip' };
  const east = { azimuth: 90, width: 0.6, height: 1 };
  const north = { azimuth: 0, width: 1, height: 1 };
  return paneHouse([west, east, north]);
}

export function example(name: string): Project {
  const path = new URL(`../../../data/examples/${name}.shadewright.json`, import.meta.url);
  return checkProject(readFileSync(fileURLToPath(path), 'utf8'), library).project!;
}

/** Names that a careless page, file or spreadsheet would stumble over. */
export const AWKWARD = [
  '<script>alert(1)</script> & "quotes" \'single\'',
  '=HYPERLINK("http://example.invalid","x")',
  '+1+2',
  '-2+3',
  '@SUM(A1)',
  '\tTab first',
  'חלון מערבי',
  '🏠🪟 Fenster 👩‍👩‍👧',
  '$t(question) {{openings}} %s',
] as const;
