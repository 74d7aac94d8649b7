import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import type { Project } from '../../lib/project/index.ts';

/** The row of the facade table that sums up the house, once the figures are there. */
export function houseRow(page: Page): Locator {
  return page.locator('#figures tr.house');
}

/** Text of that row. */
export async function houseFigures(page: Page): Promise<string> {
  await houseRow(page).waitFor();
  return houseRow(page).innerText();
}

/** Waits until the figures differ from what they were. */
export async function figuresAfter(page: Page, before: string): Promise<string> {
  await page.waitForFunction((old) => {
    const row = document.querySelector<HTMLElement>('#figures tr.house');
    return row && row.innerText !== old;
  }, before);
  return houseFigures(page);
}

/** Opens a bench by its button. */
export async function openBench(page: Page, name: string, id: string): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name, exact: true }).click();
  await page.locator(`[data-bench-shown="${id}"]`).waitFor();
}

/** Opens the project menu and presses one of its buttons. */
export async function fromMenu(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Project', exact: true }).click();
  await page.getByRole('button', { name }).click();
}

/** Waits until the last change is kept. */
export async function saved(page: Page): Promise<void> {
  await page.locator('[data-saving="idle"]', { hasText: 'Saved on this computer at' }).waitFor();
}

/** Name of the project in the header. */
export function projectName(page: Page): Locator {
  return page.getByRole('textbox', { name: 'Name of the project' });
}

export async function rename(page: Page, name: string): Promise<void> {
  await projectName(page).fill(name);
  await projectName(page).press('Enter');
}

/** The file that Ctrl+S hands over; pressed once more where a busy browser lets it pass. */
export async function savedFile(page: Page): Promise<{ name: string; text: string }> {
  const save = async () => {
    const download = page.waitForEvent('download', { timeout: 15_000 });
    await page.keyboard.press('Control+s');
    return download;
  };
  const file = await save().catch(save);
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), 'utf8') };
}

/** The project as the page saves it. */
export async function projectOf(page: Page): Promise<Project> {
  return JSON.parse((await savedFile(page)).text) as Project;
}
