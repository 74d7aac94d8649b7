/** Path of a Chromium on this machine, or undefined. */
export function findChromium(): string | undefined;
export const launchFlags: string[];
