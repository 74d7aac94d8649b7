import type { Wording } from '../../words/index.ts';

/** A fault of the program: what it said itself, or that a worker never came up. */
export type Fault = { said: string } | { unstarted: 'engine' | 'worker' };

export function faultText(words: Wording, fault: Fault): string {
  return 'said' in fault ? fault.said : words.of('shell')(`fault.${fault.unstarted}`);
}

/** What a worker's error event tells. */
export function faultOf(event: ErrorEvent, worker: 'engine' | 'worker'): Fault {
  return event.message ? { said: event.message } : { unstarted: worker };
}
