import type { CompiledRule, CompiledSchedule } from './compile.ts';
import { fallingLatch, latchedSteps, risingLatch } from './latch.ts';
import type { Latch } from './latch.ts';
import { memo } from './memo.ts';
import type { Sensors } from './sensors.ts';
import { claim, complement, everyStep, has, keep, stepsOf } from './stepSet.ts';
import type { StepSet } from './stepSet.ts';
import type { RuleConditions } from './types.ts';

/** When a rule decides. */
export interface Turn {
  /** Steps at which all but the rule's room triggers hold and no rule before it is sure to. */
  steps: StepSet;
  action: number;
  /** The rule's room triggers; it decides only while all of them hold. */
  room: RoomTrigger[];
}

/** A trigger whose readings come one at a time. */
export interface RoomTrigger {
  latch: Latch;
  held: boolean;
}

/**
 * The turns of a schedule's rules, in order. Of rules without room triggers only the first that
 * holds has its turn at a step; one with room triggers leaves the rules behind it their turns too.
 */
export function turnsOf(schedule: CompiledSchedule, sensors: Sensors): Turn[] {
  const free = everyStep();
  return schedule.rules.map((rule) => {
    const steps = heldSteps(rule, sensors);
    const room = roomTriggers(rule.when);
    if (room.length === 0) claim(steps, free);
    else keep(steps, free);
    return { steps, action: rule.action, room };
  });
}

/** What the rules ask for at a step: the first turn whose room triggers hold, or raised. */
export function wishAt(turns: readonly Turn[], step: number): number {
  for (const turn of turns) {
    if (has(turn.steps, step) && allHeld(turn.room)) return turn.action;
  }
  return 0;
}

function allHeld(room: readonly RoomTrigger[]): boolean {
  for (const trigger of room) if (!trigger.held) return false;
  return true;
}

/** Steps at which all of a rule's conditions hold, those on the room left out. */
function heldSteps({ when, allowed }: CompiledRule, sensors: Sensors): StepSet {
  const { irradianceAbove, irradianceBelow, outdoorAbove, outdoorBelow } = when;
  const { sunOnFacade, facadeIrradiance, outdoor } = sensors;
  const steps = allowed.slice();
  if (when.sunOnFacade !== undefined) keep(steps, sunSteps(when.sunOnFacade, sunOnFacade));
  if (irradianceAbove) keep(steps, latchedSteps(risingLatch(irradianceAbove), facadeIrradiance));
  if (irradianceBelow) keep(steps, latchedSteps(fallingLatch(irradianceBelow), facadeIrradiance));
  if (outdoorAbove) keep(steps, latchedSteps(risingLatch(outdoorAbove), outdoor));
  if (outdoorBelow) keep(steps, latchedSteps(fallingLatch(outdoorBelow), outdoor));
  return steps;
}

function sunSteps(on: boolean, flags: Uint8Array): StepSet {
  const sunny = memo(flags, 'on', () => stepsOf(flags));
  return on ? sunny : memo(flags, 'off', () => complement(sunny));
}

function roomTriggers({ roomAbove, roomBelow }: RuleConditions): RoomTrigger[] {
  const triggers: RoomTrigger[] = [];
  if (roomAbove) triggers.push({ latch: risingLatch(roomAbove), held: false });
  if (roomBelow) triggers.push({ latch: fallingLatch(roomBelow), held: false });
  return triggers;
}
