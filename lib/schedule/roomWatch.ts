import type { RoomRule } from './wishes.ts';

/** The rules that wait for the room, read step by step. */
export interface RoomWatch {
  /** 1 for each trigger that holds, in order of the rules. */
  held: Uint8Array;
  /**
   * Reads every trigger. Triggers latch on, whether or not their rule has its turn; a temperature
   * that is no number changes none.
   * @returns whether all triggers of any rule hold
   */
  read(roomTemperature: number): boolean;
  /** Action of the first rule that holds at step `i` by the last reading, -1 for none. */
  wish(i: number): number;
  /** Goes back to triggers held at another time. */
  restore(held: Uint8Array): void;
}

export function roomWatch(rules: readonly RoomRule[]): RoomWatch {
  const latches = rules.flatMap((rule) => rule.latches);
  const sign = Float64Array.from(latches, (latch) => latch.sign);
  const at = Float64Array.from(latches, (latch) => latch.at);
  const release = Float64Array.from(latches, (latch) => latch.release);
  const triggers = Uint8Array.from(rules, (rule) => rule.latches.length);
  const actions = Uint8Array.from(rules, (rule) => rule.action);
  const holds = rules.map((rule) => rule.holds);
  const held = new Uint8Array(latches.length);
  const allHeld = new Uint8Array(rules.length);
  let anyRule = false;
  let last = NaN;

  function read(roomTemperature: number): boolean {
    // The same reading again changes no latch.
    if (roomTemperature === last) return anyRule;
    last = roomTemperature;
    anyRule = false;
    for (let rule = 0, n = 0; rule < allHeld.length; rule++) {
      let all = 1;
      for (const end = n + triggers[rule]; n < end; n++) {
        const x = sign[n] * roomTemperature;
        if (x >= at[n]) held[n] = 1;
        else if (x <= release[n]) held[n] = 0;
        all &= held[n];
      }
      allHeld[rule] = all;
      if (all === 1) anyRule = true;
    }
    return anyRule;
  }

  function wish(i: number): number {
    for (let rule = 0; rule < allHeld.length; rule++) {
      if (allHeld[rule] === 1 && holds[rule][i] === 1) return actions[rule];
    }
    return -1;
  }

  return {
    held,
    read,
    wish,
    restore(before) {
      held.set(before);
      last = NaN;
    },
  };
}
