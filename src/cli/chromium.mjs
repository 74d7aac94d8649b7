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
