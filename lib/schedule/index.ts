export type { ClockMinutes, Rule, RuleAction, RuleConditions, Schedule, Trigger } from './types.ts';
export { compileSchedule } from './compile.ts';
export type { CompiledRule, CompiledSchedule } from './compile.ts';
export { createStepper, leadIn, runSchedule } from './stepper.ts';
export type { RunCounts, RunOptions, Stepper } from './stepper.ts';
export type { Sensors } from './holds.ts';
