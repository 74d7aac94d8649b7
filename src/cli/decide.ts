import { decideCommand } from './decideCommand.ts';
import { runAsProcess, terminal } from './fail.ts';

await runAsProcess(decideCommand(terminal));
