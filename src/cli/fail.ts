import { InputError, formatProblem } from '../../lib/problem/index.ts';

/** Exit codes of every command: 0 done, 2 bad input, 1 a fault of the program. */
export const EXIT = { done: 0, fault: 1, input: 2 } as const;

/** Runs a command and turns what it throws into lines on stderr and an exit code. */
export async function runCommand(command: () => void | Promise<void>): Promise<void> {
  try {
    await command();
  } catch (error) {
    if (error instanceof InputError) {
      for (const problem of error.problems) console.error(`error: ${formatProblem(problem)}`);
      process.exitCode = EXIT.input;
    } else {
      console.error(`This is a fault of the program, not of your files: ${String(error)}`);
      if (process.env.SHADEWRIGHT_TRACE && error instanceof Error) console.error(error.stack);
      process.exitCode = EXIT.fault;
    }
  }
}
