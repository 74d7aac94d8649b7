import { runAsProcess, terminal } from './fail.ts';
import { reportCommand } from './reportCommand.ts';

await runAsProcess(reportCommand(terminal));
