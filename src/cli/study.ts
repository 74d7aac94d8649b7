import { runAsProcess, terminal } from './fail.ts';
import { studyCommand } from './studyCommand.ts';

await runAsProcess(studyCommand(terminal));
