import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import process from 'node:process';

const places = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/lib/chromium/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** Path of a Chromium on this machine, or undefined. */
export function findChromium() {
  return places.find((path) => path && existsSync(path));
}

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

/** Flags for headless runs: no sandbox for root, no background traffic. */
export const launchFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
