import type { Project } from '../../../lib/project/index.ts';
import type { Rule, Schedule } from '../../../lib/schedule/index.ts';
import { gridOf } from '../charts/schedule/cells.ts';
import type { Cells } from '../charts/schedule/cells.ts';
import type { ProjectState } from '../state/project.svelte.ts';
import type { Selection } from '../state/selection.svelte.ts';
import type { Wording } from '../../words/index.ts';
import { paintedRule } from './ruleEdits.ts';
import { addRule, newSchedule, ruleOf, scheduleById } from './scheduleEdits.ts';
import {
  blindKey,
  followedBy,
  followersOf,
  membersOf,
  targetOfOpening,
  targetsOf,
} from './targets.ts';
import type { Target } from './targets.ts';

/** Stands for the rule that painting makes. */
export const NEW_PAINTED = '';

/** What the schedule desk is busy with: what is scheduled, its schedule, the rule that is painted. */
export class Desk {
  readonly project: ProjectState;
  readonly selection: Selection;
  readonly words: Wording;
  /** What was done last, and which entry of the history it was. */
  done = $state.raw<{ text: string; after: object }>();

  #key = $state('');
  #rule = $state<string>();
  #stroke = 0;
  #beforeStroke: Project | undefined;
  #strokeLabel = '';

  constructor(project: ProjectState, selection: Selection, words: Wording) {
    this.project = project;
    this.selection = selection;
    this.words = words;
  }

  get current(): Project {
    return this.project.current;
  }

  readonly targets = $derived.by(() => targetsOf(this.project.current));

  /** What is scheduled now: what was chosen here, or what moves the opening chosen elsewhere. */
  readonly target = $derived.by((): Target | undefined => {
    const { current } = this.project;
    const chosen = this.targets.find((t) => t.key === this.#key);
    const key = targetOfOpening(current, this.selection.opening);
    if (chosen && (!key || membersOf(current, chosen).length === 0)) return chosen;
    return this.targets.find((t) => t.key === key) ?? chosen ?? this.targets[0];
  });

  readonly members = $derived.by(() =>
    this.target ? membersOf(this.project.current, this.target) : [],
  );

  readonly schedule = $derived.by((): Schedule | undefined => {
    const { current } = this.project;
    return this.target && scheduleById(current, followedBy(current, this.target));
  });

  /** Others that follow the same schedule. */
  readonly others = $derived.by(() =>
    this.schedule
      ? followersOf(this.project.current, this.schedule.id).filter(
          (t) => t.key !== this.target?.key,
        )
      : [],
  );

  /** The rule that is painted; undefined: painting makes one. */
  readonly rule = $derived.by((): Rule | undefined => {
    if (!this.schedule || this.#rule === NEW_PAINTED) return undefined;
    const chosen = ruleOf(this.schedule, this.#rule);
    return chosen ?? this.schedule.rules.find((rule) => rule.when.grid);
  });

  /** What a rule of the schedule is called: its name, or its number. */
  ruleName(index: number): string {
    const name = this.schedule?.rules[index]?.name?.trim();
    return name || this.words.of('schedules')('rules.unnamed', { number: index + 1 });
  }

  choose(key: string): void {
    this.#key = key;
    this.#rule = undefined;
    const target = this.targets.find((t) => t.key === key);
    const members = target ? membersOf(this.project.current, target) : [];
    if (!members.some((o) => o.id === this.selection.opening)) {
      this.selection.opening = members[0]?.id ?? '';
    }
  }

  chooseRule(id: string): void {
    this.#rule = id;
  }

  /** Chooses whatever moves an opening now. */
  chooseOpening(id: string): void {
    this.choose(targetOfOpening(this.project.current, id) ?? blindKey(id));
  }

  say(text: string): void {
    this.done = { text, after: this.project.current };
  }

  /** Whether what was said last can be taken back. */
  get undoable(): boolean {
    return this.done?.after === this.current && this.project.history.undoLabel !== undefined;
  }

  undo(): void {
    this.project.history.undo();
    this.say(this.words.of('schedules')('undone'));
  }

  /** Changes the schedule on the desk. */
  edit(label: string, change: (schedule: Schedule, draft: Project) => void, field?: string): void {
    const id = this.schedule?.id;
    this.project.edit(
      label,
      (draft) => {
        const schedule = scheduleById(draft, id);
        if (schedule) change(schedule, draft);
      },
      field && `schedule ${id} ${field}`,
    );
  }

  /** Changes one rule of the schedule on the desk. */
  editRule(id: string, change: (rule: Rule) => void, field: string): void {
    this.edit(
      this.words.of('schedules')('edit.changeRule'),
      (schedule) => {
        const rule = ruleOf(schedule, id);
        if (rule) change(rule);
      },
      `${id} ${field}`,
    );
  }

  /** Sets the painted hours; calls with the same stroke undo as one. */
  paint(cells: Cells, stroke: number): void {
    const target = this.target;
    if (!target) return;
    const t = this.words.of('schedules');
    if (stroke !== this.#stroke) {
      this.#beforeStroke = this.project.current;
      this.#strokeLabel = t('edit.paint');
    }
    this.#stroke = stroke;
    const scheduleId = this.schedule?.id;
    const ruleId = this.rule?.id;
    let made: string | undefined;
    this.project.edit(
      this.#strokeLabel,
      (draft) => {
        const schedule = scheduleById(draft, scheduleId ?? newSchedule(t, draft, target.key));
        if (!schedule) return;
        const rule = ruleOf(schedule, ruleId);
        if (rule) rule.when.grid = gridOf(cells);
        else made = addRule(schedule, paintedRule(t, cells), 0);
      },
      `paint ${stroke}`,
    );
    if (made !== undefined) this.#rule = made;
  }

  /** Takes back what the stroke under way has painted. */
  cancelStroke(): void {
    const { history } = this.project;
    while (this.project.current !== this.#beforeStroke && history.undoLabel === this.#strokeLabel) {
      history.undo();
    }
  }
}
