import { CommanderError } from 'commander';
import type { Command } from 'commander';
import { InputError, formatProblem } from '../../lib/problem/index.ts';

/** Exit codes of every command: 0 done, 2 bad input, 1 a fault of the program. */
export const EXIT = { done: 0, fault: 1, input: 2 } as const;

/** Where a command writes, so that it can be run inside a test. */
export interface Output {
  /** One or more lines for the user. */
  print(text: string): void;
  /** One line about what is wrong. */
  complain(text: string): void;
}

export const terminal: Output = {
  print: (text) => console.log(text),
  complain: (text) => console.error(text),
};

/** Runs a command line and turns what it throws into complaints and an exit code. */
export async function runProgram(
  program: Command,
  args: readonly string[],
  output: Output,
): Promise<number> {
  program.exitOverride();
  program.configureOutput({
    writeOut: (text) => output.print(text.trimEnd()),
    writeErr: (text) => output.complain(text.trimEnd()),
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return EXIT.done;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.input;
    if (error instanceof InputError) {
      for (const problem of error.problems) output.complain(`error: ${formatProblem(problem)}`);
      return EXIT.input;
    }
    output.complain(`This is a fault of the program, not of your files: ${String(error)}`);
    if (process.env.SHADEWRIGHT_TRACE && error instanceof Error) {
      output.complain(error.stack ?? '');
    }
    return EXIT.fault;
  }
}

/** Runs a command line as the whole process. */
export async function runAsProcess(program: Command): Promise<void> {
  // A reader that stops early (`| head`) is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    process.exit(error.code === 'EPIPE' ? EXIT.done : EXIT.fault);
  });
  process.exitCode = await runProgram(program, process.argv.slice(2), terminal);
}
