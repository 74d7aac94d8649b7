import { getContext, setContext } from 'svelte';
import type { DecisionState } from './decision.svelte.ts';
import type { EngineState } from './engine.svelte.ts';
import type { FilesState } from './files.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';
import type { ProjectState } from './project.svelte.ts';
import type { SchemesState } from './schemes.svelte.ts';
import type { SearchState } from './search.svelte.ts';
import type { Selection } from './selection.svelte.ts';
import type { SureState } from './sure.svelte.ts';
import type { WordsState } from './words.svelte.ts';

/** The stores every panel shares. */
export interface Workbench {
  project: ProjectState;
  engine: EngineState;
  decision: DecisionState;
  search: SearchState;
  schemes: SchemesState;
  sure: SureState;
  selection: Selection;
  preferences: Preferences;
  words: WordsState;
  files: FilesState;
}

const KEY = Symbol('workbench');

export function provideWorkbench(workbench: Workbench): Workbench {
  return setContext(KEY, workbench);
}

/** For a page without the workbench around it: its parts have the words alone. */
export function provideWords(words: WordsState): void {
  setContext<Pick<Workbench, 'words'>>(KEY, { words });
}

export function useWorkbench(): Workbench {
  return getContext(KEY);
}
