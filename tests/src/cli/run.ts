import { runProgram } from '../../../src/cli/fail.ts';
import type { Output } from '../../../src/cli/fail.ts';

type MakeCommand = (output: Output) => Parameters<typeof runProgram>[0];

/** Runs a command in this process and gives its exit code with all it printed. */
export function runner(make: MakeCommand) {
  return async (...args: string[]) => {
    const printed: string[] = [];
    const complaints: string[] = [];
    const output: Output = {
      print: (text) => void printed.push(text),
      complain: (text) => void complaints.push(text),
    };
    const code = await runProgram(make(output), args, output);
    return { code, printed: printed.join('\n'), complaints: complaints.join('\n') };
  };
}
