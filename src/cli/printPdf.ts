import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import type { ClientPage } from '../client/index.ts';
import { serveFolder } from './serve.ts';
import { withTab } from './tab.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** How long the browser may take to set the page, ms. */
const PATIENCE = 60_000;

/**
 * Prints a client page to PDF with the built app.
 * @param given a built app to take as it is; absent: the project's own, built first where that is due
 */
export async function printPdf(
  page: ClientPage,
  given?: string,
  say: (text: string) => void = () => undefined,
): Promise<Uint8Array> {
  const dist = given ?? join(root, 'dist');
  if (given === undefined) await ensureBuilt(dist, say);
  const server = await serveFolder(dist);
  try {
    return await withTab(async (tab) => {
      const faults: string[] = [];
      tab.on('pageerror', (error) => faults.push(error.message));
      await tab.goto(`${server.url}/#paper`);
      return printed(tab, page, faults);
    });
  } finally {
    await server.close();
  }
}

async function printed(tab: Page, page: ClientPage, faults: string[]): Promise<Uint8Array> {
  await tab.locator('input[type="file"]').setInputFiles({
    name: 'page.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(page)),
  });
  const ready = tab.locator('html[data-paper="ready"]');
  await ready.waitFor({ state: 'attached', timeout: PATIENCE }).catch((error: unknown) => {
    throw new Error(`The page was not set. ${faults.join(' ')} ${String(error)}`);
  });
  if (faults.length > 0) throw new Error(`The page was not set. ${faults.join(' ')}`);
  return await tab.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    tagged: true,
    outline: true,
  });
}

/** Builds the app where it is absent or older than what it is built from. */
async function ensureBuilt(dist: string, say: (text: string) => void): Promise<void> {
  const index = join(dist, 'index.html');
  const built = existsSync(index) ? statSync(index).mtimeMs : 0;
  const sources = ['src', 'lib', 'data', 'static', 'vite.config.ts', 'package.json'];
  if (built > Math.max(...sources.map((name) => newest(join(root, name))))) return;
  say('Building the app first ...');
  const { build } = await import('vite');
  await build({
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'error',
    build: { outDir: dist, emptyOutDir: true },
  });
}

/** When the newest file under a path was changed, ms; 0 where there is none. */
function newest(path: string): number {
  if (!existsSync(path)) return 0;
  const found = statSync(path);
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => newest(join(path, name))));
}
