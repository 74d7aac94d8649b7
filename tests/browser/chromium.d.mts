/** Path of a Chromium on this machine, or undefined. */
export function findChromium(): string | undefined;
export function ensureChromium(): { path?: string; message?: string };
export const launchFlags: string[];
