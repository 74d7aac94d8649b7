import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import type { BrowserContext, Page } from 'playwright-core';
import { findChromium, launchFlags } from './chromium.mjs';
import { serveFolder } from './server.ts';
import type { StaticServer } from './server.ts';

export interface AppOptions {
  /** Window size, CSS pixels. */
  width?: number;
  height?: number;
  dark?: boolean;
  /** First language of the browser's; `en-US` unless told. */
  locale?: string;
  /** What follows the host in the address: `/#schedule`. */
  path?: string;
  /** Lets a test put its own script into the page. */
  bypassCSP?: boolean;
}

export interface OpenApp {
  page: Page;
  context: BrowserContext;
  server: StaticServer;
  /** Everything that went wrong so far on any page of this browser; empty where all is well. */
  errors: string[];
  close(): Promise<void>;
}

/** The built app: `dist/`, or the folder named by APP_DIST. */
export const distFolder =
  process.env.APP_DIST ?? fileURLToPath(new URL('../../dist', import.meta.url));

/** Opens the built app in a browser of its own that has never seen it. */
export async function openApp(options: AppOptions = {}): Promise<OpenApp> {
  const { width = 1440, height = 900, dark = false, path = '/', bypassCSP = false } = options;
  const { locale = 'en-US' } = options;
  if (!existsSync(distFolder))
    throw new Error(`There is no ${distFolder}: run npm run build first.`);
  const server = await serveFolder(distFolder);
  // An empty path stands for a new, empty user data folder.
  const context = await chromium.launchPersistentContext('', {
    executablePath: findChromium(),
    args: launchFlags,
    viewport: { width, height },
    colorScheme: dark ? 'dark' : 'light',
    bypassCSP,
    locale,
    acceptDownloads: true,
  });
  const errors: string[] = [];
  context.on('page', (page) => listen(page, errors));
  const page = context.pages()[0] ?? (await context.newPage());
  listen(page, errors);
  await page.goto(server.url + path);
  return {
    page,
    context,
    server,
    errors,
    close: async () => {
      await context.close();
      await server.close();
    },
  };
}

const heard = new WeakSet<Page>();

/** Notes console errors and warnings, uncaught errors and failed requests of a page. */
function listen(page: Page, errors: string[]): void {
  if (heard.has(page)) return;
  heard.add(page);
  let open = true;
  page.on('close', () => (open = false));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) errors.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => errors.push(`page: ${error.message}`));
  page.on('response', (response) => {
    if (response.status() >= 400) errors.push(`${response.status()}: ${response.url()}`);
  });
  page.on('requestfailed', (request) => {
    const reason = request.failure()?.errorText ?? '';
    // A page that is left or reloaded drops what it was still fetching.
    if (open && reason !== 'net::ERR_ABORTED') errors.push(`request: ${request.url()} ${reason}`);
  });
}
