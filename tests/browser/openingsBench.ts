import type { Locator, Page } from 'playwright-core';
import type { Project } from '../../lib/project/index.ts';
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';

const BENCH = '/#openings';

/** Opens the bench and waits until the ring is drawn. */
export async function openBench(options: Parameters<typeof openApp>[0] = {}): Promise<OpenApp> {
  const app = await openApp({ path: BENCH, ...options });
  await app.page.locator('[data-opening="west-door"]').waitFor();
  return app;
}

export type Leaves = Record<string, unknown>;

/** Every plain value of a project by its path; listed things go by their id. */
function leaves(value: unknown, path = ''): Leaves {
  if (typeof value !== 'object' || value === null) return { [path]: value };
  return Object.assign(
    {},
    ...Object.entries(value).map(([key, item]: [string, unknown]) => {
      const id = (item as { id?: unknown } | null)?.id;
      const name = Array.isArray(value) && typeof id === 'string' ? id : key;
      return leaves(item, path ? `${path}.${name}` : name);
    }),
  ) as Leaves;
}

/** What differs, by path, with its value after. */
export function changes(before: Project, after: Project): Leaves {
  const [a, b] = [leaves(before), leaves(after)];
  const paths = new Set([...Object.keys(a), ...Object.keys(b)]);
  return Object.fromEntries([...paths].filter((p) => a[p] !== b[p]).map((p) => [p, b[p]]));
}

export async function choose(page: Page, name: string): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Openings by wall' })
    .getByRole('button', { name })
    .click();
}

export async function openAll(page: Page): Promise<void> {
  const shut = page.locator('[data-bench-shown] details:not([open]) > summary');
  while ((await shut.count()) > 0) await shut.first().press('Enter');
}

/** A field of the form; handles of the wall cut may have the same name. */
export const field = (page: Page, label: string) =>
  page.locator('input, select').and(page.getByLabel(label, { exact: true }));

export async function type(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).press('Tab');
}

/** Middle of what is drawn. */
export async function middle(locator: Locator): Promise<{ x: number; y: number }> {
  await locator.scrollIntoViewIfNeeded();
  const box = (await locator.boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

export async function drag(
  page: Page,
  from: { x: number; y: number },
  to: { x: number; y: number },
): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
  await page.mouse.up();
}
