import type { Page } from 'playwright-core';
import { InputError } from '../../lib/problem/index.ts';
import { findChromium, launchFlags } from './chromium.mjs';

/** Path of a Chromium for what an option asks. @throws InputError where there is none, with what to do */
export function chromiumPath(option: string): string {
  const path = findChromium();
  if (path) return path;
  throw new InputError({
    path: option,
    message: 'needs a Chromium, and none was found on this machine',
    value: 'no Chromium',
    allowed: 'an installed Chromium or the CHROMIUM variable with its path',
    fix:
      'Install one (Debian, Ubuntu: sudo apt-get install chromium), name one ' +
      '(CHROMIUM=/path/to/chromium npm run report -- ...), or print from the Client page in any browser.',
  });
}

/** Does something in a tab of a Chromium of its own, which is closed afterwards. */
export async function withTab<T>(use: (tab: Page) => Promise<T>, scale = 1): Promise<T> {
  const { chromium } = await import('playwright-core');
  const browser = await chromium.launch({ executablePath: chromiumPath(''), args: launchFlags });
  try {
    return await use(await browser.newPage({ deviceScaleFactor: scale }));
  } finally {
    await browser.close();
  }
}
