import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import process from 'node:process';
import { findChromium, launchFlags } from '../../src/cli/chromium.mjs';

export { findChromium, launchFlags };

/**
 * Finds a Chromium, or installs Debian's where this runs as root on such a system.
 * @returns {{path?: string, message?: string}}
 */
export function ensureChromium() {
  const found = findChromium();
  if (found) return { path: found };
  const root = process.getuid?.() === 0;
  if (root && existsSync('/usr/bin/apt-get')) {
    const run = (args) => spawnSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'] });
    run(['update']);
    run(['install', '-y', '--no-install-recommends', 'chromium', 'poppler-utils']);
    const installed = findChromium();
    if (installed) return { path: installed };
  }
  return {
    message:
      'No Chromium was found for the browser tests. Install one: sudo apt-get install chromium poppler-utils\n' +
      'or name one: CHROMIUM=/path/to/chromium npm test',
  };
}
