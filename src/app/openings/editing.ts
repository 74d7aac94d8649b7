import type { Project, ProjectOpening } from '../../../lib/project/index.ts';

/** What the sections of the form are given: the opening, and the way to change it. */
export interface SectionProps {
  opening: ProjectOpening;
  /**
   * Changes the chosen opening in a draft of the project.
   * @param field edits of one field shortly after one another undo as one
   */
  edit: (change: (opening: ProjectOpening, draft: Project) => void, field: string) => void;
}

export const SIDES = ['head', 'sill', 'left', 'right'] as const;
