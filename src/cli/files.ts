import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { InputError } from '../../lib/problem/index.ts';

/** Reads a text file; a file that cannot be read is bad input, said with what to do. */
export function readText(path: string, what: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new InputError({
      path: what,
      message: `cannot be read (${reason(error)})`,
      value: JSON.stringify(path),
      allowed: 'the path of a readable file',
      fix: 'Check the spelling of the path and that you may read it.',
    });
  }
}

/** Writes a text file and the folders above it. */
export function writeText(path: string, text: string): void {
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  } catch (error) {
    throw new InputError({
      path: '--out',
      message: `cannot be written (${reason(error)})`,
      value: JSON.stringify(path),
      allowed: 'a folder you may write to',
      fix: 'Choose another folder.',
    });
  }
}

function reason(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code;
  const reasons: Record<string, string> = {
    ENOENT: 'there is no such file',
    EISDIR: 'it is a folder',
    ENOTDIR: 'part of the path is no folder',
    EACCES: 'permission denied',
    EEXIST: 'a file of that name is in the way',
    ENOSPC: 'the disk is full',
  };
  return reasons[code ?? ''] ?? String(code ?? error);
}
