import { readFileSync, readdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { distFolder, openApp } from './app.ts';
import type { OpenApp } from './app.ts';

const BUDGET = 250_000;

describe('the first load', () => {
  let app: OpenApp;
  let scripts: string[];

  beforeAll(async () => {
    app = await openApp();
    await app.page.getByRole('heading', { name: 'Facades and openings' }).waitFor();
    scripts = await app.page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .map((entry) => new URL(entry.name).pathname)
        .filter((path) => path.endsWith('.js')),
    );
  });

  afterAll(() => app.close());

  it('needs under 250 kB of script, engine included, as it is sent (gzip)', () => {
    const sizes = [...new Set(scripts)].map((path) => {
      const bytes = gzipSync(readFileSync(`${distFolder}${path}`), { level: 9 }).length;
      return [path, bytes] as const;
    });
    const total = sizes.reduce((sum, [, bytes]) => sum + bytes, 0);
    expect(sizes.length).toBeGreaterThan(1);
    expect(total, JSON.stringify(sizes)).toBeLessThan(BUDGET);
  });

  it('leaves the world map and the other examples until they are asked for', () => {
    const files = readdirSync(`${distFolder}/assets`).filter((file) =>
      /^(world|bellingham|albuquerque)/i.test(file),
    );
    expect(files.length).toBeGreaterThanOrEqual(3);
    for (const file of files) expect(scripts.some((path) => path.endsWith(file))).toBe(false);
  });
});
