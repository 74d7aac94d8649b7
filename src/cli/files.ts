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
  write(path, text, '--out', 'a folder you may write to', 'Choose another folder.');
}

/** Writes a file of bytes and the folders above it. */
export function writeBytes(path: string, bytes: Uint8Array, option: string): void {
  write(path, bytes, option, 'a file you may write', 'Choose another path.');
}

function write(
  path: string,
  content: string | Uint8Array,
  option: string,
  allowed: string,
  fix: string,
): void {
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  } catch (error) {
    throw new InputError({
      path: option,
      message: `cannot be written (${reason(error)})`,
      value: JSON.stringify(path),
      allowed,
      fix,
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
