import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Sees that the tools that read a PDF are there; as root on Debian it installs them. */
export function ensurePdfTools(): void {
  if (hasTools()) return;
  if (process.getuid?.() === 0) {
    spawnSync('apt-get', ['update'], { stdio: 'ignore' });
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'poppler-utils'], {
      stdio: 'ignore',
    });
    if (hasTools()) return;
  }
  throw new Error(
    'pdftotext, pdffonts and pdfinfo are needed to read the printed page. Debian, Ubuntu: ' +
      'sudo apt-get install poppler-utils; macOS: brew install poppler.',
  );
}

function hasTools(): boolean {
  return ['pdftotext', 'pdffonts', 'pdfinfo'].every(
    (tool) => spawnSync(tool, ['-v'], { stdio: 'ignore' }).error === undefined,
  );
}

export interface ReadPdf {
  /** Text of each page. */
  pages: string[];
  /** Width and height of each page, points. */
  sizes: [number, number][];
  fonts: { name: string; embedded: boolean }[];
}

export function readPdf(bytes: Uint8Array): ReadPdf {
  const folder = mkdtempSync(join(tmpdir(), 'shadewright-pdf-'));
  const file = join(folder, 'page.pdf');
  writeFileSync(file, bytes);
  const run = (tool: string, args: string[]) =>
    spawnSync(tool, args, { encoding: 'utf8', maxBuffer: 50_000_000 }).stdout;
  const text = run('pdftotext', ['-layout', file, '-']);
  const info = run('pdfinfo', ['-l', '999', file]);
  const fonts = run('pdffonts', [file]).split('\n').slice(2).filter(Boolean);
  rmSync(folder, { recursive: true, force: true });
  return {
    pages: text.split('\f').slice(0, -1),
    sizes: [...info.matchAll(/size:\s+([\d.]+) x ([\d.]+) pts/g)].map((m) => [
      Number(m[1]),
      Number(m[2]),
    ]),
    fonts: fonts.map((line) => {
      // name, type, encoding, emb, sub, uni, object: counted from the end, as types have blanks.
      const cells = line.trim().split(/\s+/);
      return { name: cells[0]!, embedded: cells.at(-5) === 'yes' };
    }),
  };
}
