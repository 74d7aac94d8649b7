import { runAsProcess, terminal } from './fail.ts';
import { searchCommand } from './searchCommand.ts';

await runAsProcess(searchCommand(terminal));
