import { runAsProcess, terminal } from './fail.ts';
import { sureCommand } from './sureCommand.ts';

await runAsProcess(sureCommand(terminal));
