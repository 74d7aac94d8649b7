import { afterEach, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { brokenWeatherTexts } from '../lib/climate/read/broken.ts';
import {
  lines,
  pvgisText,
  tableHeading,
  tableRows,
  tableText,
  tmy3Text,
} from '../lib/climate/read/synthetic.ts';
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';
import { figuresAfter, houseFigures, saved } from './house.ts';

let app: OpenApp;
let page: Page;
let before: string;

async function start(locale = 'en-US'): Promise<void> {
  app = await openApp({ path: '/#site', locale });
  page = app.page;
  await page
    .getByRole('radiogroup', { name: /^(Place with weather|Ort mit Wetterdaten)$/ })
    .waitFor();
  before = await houseFigures(page);
}

afterEach(() => app.close());

const field = (name: string) => page.getByRole('textbox', { name, exact: true });

async function set(name: string, value: string): Promise<void> {
  await field(name).fill(value);
  await field(name).press('Enter');
}

describe('a place that ships', () => {
  it('is found by words and moves site, clock and weather', async () => {
    await start();
    await page.getByRole('searchbox', { name: 'Find a place' }).fill('mexico albu');
    await page.getByText('1 found').waitFor();
    await page.getByRole('radio', { name: /Albuquerque/ }).check();
    await figuresAfter(page, before);
    expect(await field('Latitude').inputValue()).toBe('35.04°');
    expect(await page.getByRole('combobox', { name: 'Time zone' }).inputValue()).toBe(
      'America/Denver',
    );
    await page.getByText('Weather of Albuquerque, New Mexico:').waitFor();
    await page.keyboard.press('Control+z');
    expect(await field('Latitude').inputValue()).toBe('44.47°');
    expect(app.errors).toEqual([]);
  });

  it('is chosen with the arrow keys alone', async () => {
    await start();
    await page.getByRole('radio', { name: /Burlington/ }).focus();
    await page.keyboard.press('ArrowDown');
    await figuresAfter(page, before);
    expect(await page.getByRole('radio', { name: /Chicago/ }).isChecked()).toBe(true);
  });

  it('gives its weather only where that is wished, and says what follows', async () => {
    await start();
    await page.getByRole('checkbox', { name: 'Take the weather only' }).check();
    await page.getByRole('radio', { name: /Miami/ }).check();
    await figuresAfter(page, before);
    expect(await field('Latitude').inputValue()).toBe('44.47°');
    await page.getByText('sun and clock follow the weather').waitFor();
    await page.getByText('The nearest is Burlington, Vermont').waitFor();
    await page.getByRole('button', { name: 'Take its weather' }).click();
    await page.getByText('sun and clock follow the weather').waitFor({ state: 'detached' });
    expect(await figuresAfter(page, '')).toBe(before);
  });

  it('is chosen on the map too', async () => {
    await start();
    const dots = page.locator('figure svg circle');
    await dots.first().waitFor();
    const chosen = await page.getByRole('radio', { checked: true, name: /km/ }).count();
    expect(chosen).toBe(1);
    await page.getByRole('button', { name: 'Around the site' }).click();
    const map = page.getByRole('img', { name: /Map of the places/ });
    const box = (await map.boundingBox())!;
    // The whole world: Honolulu stands alone in its ocean.
    const x = box.x + ((180 - 157.93) / 360) * box.width;
    const y = box.y + ((90 - 21.33) / 180) * box.height;
    await page.mouse.click(x, y);
    await page.getByText('Weather of Honolulu').waitFor();
    expect(app.errors).toEqual([]);
  });
});

describe('the site', () => {
  it('takes coordinates, height and time zone, and refuses what is out of range', async () => {
    await start();
    await set('Latitude', '40.5');
    const moved = await figuresAfter(page, before);
    await set('Height above sea level', '1200');
    await page.getByRole('combobox', { name: 'Time zone' }).selectOption('America/Denver');
    await set('Longitude', '-73');
    await set('Latitude', '123');
    await page.getByText('Allowed: -90° to 90°').waitFor();
    expect(await houseFigures(page)).toBeTruthy();
    expect(moved).not.toBe(before);
    await field('Latitude').press('Escape');
    expect(await field('Latitude').inputValue()).toBe('40.5°');
    expect(app.errors).toEqual([]);
  });

  it('takes one ground reflectance or twelve', async () => {
    await start();
    const july = page.getByRole('textbox', { name: 'Ground reflectance (albedo), Jul' });
    await july.fill('0.8');
    await july.press('Enter');
    const bright = await figuresAfter(page, before);
    await page.getByRole('checkbox', { name: 'Another value each month' }).uncheck();
    await field('Ground reflectance (albedo)').waitFor();
    await figuresAfter(page, bright);
    await july.waitFor({ state: 'detached' });
  });

  it('shapes the horizon by rows and by pasting', async () => {
    await start();
    const height = page.getByRole('textbox', { name: 'Height of row 7' });
    await height.fill('40');
    await height.press('Enter');
    await page.getByText('The horizon rises to 40° at a bearing of 180°').first().waitFor();
    const walled = await figuresAfter(page, before);
    await height.fill('140');
    await height.press('Enter');
    await page.getByText('Height of row 7: 0 to 90 is allowed.').waitFor();
    await height.press('Escape');
    await paste(height, '0\t2\n180\t4,5');
    await page.getByRole('textbox', { name: 'Bearing of row 2' }).waitFor();
    expect(await page.getByRole('textbox', { name: /^Bearing of row/ }).count()).toBe(2);
    expect(await page.getByRole('textbox', { name: 'Height of row 2' }).inputValue()).toBe('4.5');
    await figuresAfter(page, walled);
    await page.getByRole('button', { name: 'Add a bearing' }).click();
    await page.getByRole('button', { name: 'Delete row 1' }).click();
    expect(await page.getByRole('textbox', { name: /^Bearing of row/ }).count()).toBe(2);
    await page.getByRole('button', { name: 'Clear' }).click();
    await page.getByText('The horizon is open all round.').waitFor();
    expect(app.errors).toEqual([]);
  });
});

describe('monthly values', () => {
  it('start from the place in use; typed and pasted values count', async () => {
    await start();
    await page.getByRole('radio', { name: /Monthly values/ }).check();
    const july = page.getByRole('textbox', { name: 'Global sun on the level, Jul' });
    const first = await figuresAfter(page, before);
    await july.fill('3.2');
    await july.press('Enter');
    const duller = await figuresAfter(page, first);
    const sun = '1,2\t1,9\t2,9\t3,8\t4,6\t5,1\t5,0\t4,3\t3,2\t2,0\t1,2\t0,9';
    await paste(july, sun);
    await figuresAfter(page, duller);
    expect(await july.inputValue()).toBe('5');
    await paste(july, '1\t2\t3');
    await page
      .getByText('Twelve numbers are needed, January to December; 3 were pasted.')
      .waitFor();
    await paste(july, sun.replace('5,1', '99'));
    await page.getByText(/Jun: 99 is not in the range/).waitFor();
    expect(await july.inputValue()).toBe('5');
    expect(app.errors).toEqual([]);
  });

  it('that cannot be are told, and the figures stay', async () => {
    await start();
    await page.getByRole('radio', { name: /Monthly values/ }).check();
    const figures = await figuresAfter(page, before);
    const mean = page.getByRole('textbox', { name: 'Mean temperature, Jul' });
    await mean.fill('45');
    await mean.press('Enter');
    await page.getByRole('alert', { name: 'Problems' }).waitFor();
    expect(await page.getByRole('alert', { name: 'Problems' }).innerText()).toContain('July');
    expect(await houseFigures(page)).toBe(figures);
    await page.keyboard.press('Control+z');
    await page.getByRole('alert', { name: 'Problems' }).waitFor({ state: 'detached' });
  });
});

describe('an hourly file', () => {
  const take = () => page.getByRole('button', { name: 'Take this weather' });

  async function give(text: string, name = 'site.csv'): Promise<void> {
    await page.getByRole('radio', { name: /Hourly file/ }).check();
    await page
      .getByRole('group', { name: /drop it here/ })
      .locator('input[type=file]')
      .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
    await page.getByRole('heading', { name: new RegExp(`^${name}, read as`) }).waitFor();
    await page.getByRole('list', { name: 'Checks of the file' }).waitFor();
  }

  const semicolons = (text: string) => text.replaceAll(',', ';').replaceAll('.', ',');
  const kinds: [string, string, string][] = [
    ['a TMY3 file', tmy3Text(), 'a TMY3 file'],
    ['a typical year of PVGIS', pvgisText(), 'a typical year of PVGIS'],
    ['a table', tableText(), 'a table'],
    ['a table with semicolons and decimal commas', semicolons(tableText()), 'a table'],
    ['a table with tabs', tableText().replaceAll(',', '\t'), 'a table'],
  ];

  it.each(kinds)('is taken: %s', async (_, text, readAs) => {
    await start();
    await give(text);
    await page.getByRole('heading', { name: `site.csv, read as ${readAs}` }).waitFor();
    await page.getByText('Sun of the year').waitFor();
    await take().click();
    await figuresAfter(page, before);
    await page.getByText('Weather of the file').waitFor();
    await saved(page);
    const figures = await houseFigures(page);
    await page.reload();
    // The file is kept with the project.
    await figuresAgain(figures);
    expect(app.errors).toEqual([]);
  });

  it('is taken by dropping it', async () => {
    await start();
    await page.getByRole('radio', { name: /Hourly file/ }).check();
    const data = await page.evaluateHandle((text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], 'dropped.csv', { type: 'text/csv' }));
      return transfer;
    }, tmy3Text());
    await page.getByRole('group', { name: /drop it here/ }).dispatchEvent('drop', {
      dataTransfer: data,
    });
    await page.getByRole('heading', { name: 'dropped.csv, read as a TMY3 file' }).waitFor();
    await take().click();
    await figuresAfter(page, before);
    expect(app.errors).toEqual([]);
  });

  it('moves the site along where that is wished', async () => {
    await start();
    await page.getByRole('radio', { name: /Denver/ }).check();
    const denver = await figuresAfter(page, before);
    const latitude = await field('Latitude').inputValue();
    expect(latitude).toMatch(/^39\.8/);
    await give(tmy3Text());
    const move = page.getByRole('checkbox', { name: /Move the site/ });
    expect(await move.isChecked()).toBe(true);
    await take().click();
    const moved = await figuresAfter(page, denver);
    expect(await field('Latitude').inputValue()).toBe('44°');
    await page.keyboard.press('Control+z');
    expect(await figuresAfter(page, moved)).toBe(denver);
    expect(await field('Latitude').inputValue()).toBe(latitude);
  });

  it('that no heading explains is pointed at by hand', async () => {
    await start();
    await give(lines(tableRows()), 'bare.csv');
    expect(await take().isDisabled()).toBe(true);
    await page.getByRole('textbox', { name: 'Lines of heading' }).fill('0');
    await page.getByRole('textbox', { name: 'Lines of heading' }).press('Enter');
    const choose = (name: string | RegExp, value: string) =>
      page.getByRole('combobox', { name }).selectOption(value);
    await choose('A row tells its time', 'stamp');
    await choose('Direct sun, square to the beam', '2');
    await choose('Diffuse sun on the level', '3');
    await choose('Outdoor temperature', '4');
    await page.getByText('Sun of the year').waitFor();
    // Stamped at the end, the sun stands half an hour or more beside the file: that is told.
    await choose('A stamp marks', 'end');
    await page.getByText('Look at', { exact: true }).first().waitFor();
    await choose('A stamp marks', 'start');
    await page.waitForFunction(
      () => !document.querySelector('[aria-label="Checks of the file"] .error'),
    );
    await take().click();
    const figures = await figuresAfter(page, before);
    await saved(page);
    await page.reload();
    await figuresAgain(figures);
    expect(app.errors).toEqual([]);
  });

  it('is found again by undo after another one of the same name', async () => {
    await start();
    await give(tmy3Text(), 'year.csv');
    await take().click();
    const first = await figuresAfter(page, before);
    await give(pvgisText(), 'year.csv');
    await take().click();
    const second = await figuresAfter(page, first);
    await page.getByText('year (2).csv').first().waitFor();
    await page.keyboard.press('Control+z');
    expect(await figuresAfter(page, second)).toBe(first);
    await page.keyboard.press('Control+Shift+Z');
    expect(await figuresAfter(page, first)).toBe(second);
  });

  it('that is broken is refused with the reason, and nothing on screen is lost', async () => {
    await start();
    const broken = brokenWeatherTexts();
    const chosen = [0, 3, 4, 6, 8, 10, 11, 15, 16, 17, 20, broken.length - 1].map((i) => broken[i]);
    expect(new Set(chosen).size).toBe(12);
    for (const { name, text, expect: reason } of chosen) {
      await give(text, 'broken.csv');
      const refused = page.getByRole('list', { name: 'Checks of the file' }).locator('.error');
      await refused.first().waitFor();
      expect([name, await take().isDisabled()]).toEqual([name, true]);
      expect(await refused.first().innerText(), name).toMatch(reason);
      await page.getByRole('button', { name: 'Leave it' }).click();
    }
    expect(await houseFigures(page)).toBe(before);
    expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
    expect(app.errors).toEqual([]);
  });

  it('whose heading names no column is shown so that it can be pointed at', async () => {
    await start();
    await give(lines(tableHeading.replace('Temperature', 'Humidity'), tableRows()), 'odd.csv');
    await page.getByRole('region', { name: 'First rows of the file' }).waitFor();
    expect(
      await page.getByRole('region', { name: 'First rows of the file' }).innerText(),
    ).toContain('Humidity');
  });
});

describe('in German', () => {
  it('a place, its clock and its horizon are given and shown in the manner of the language', async () => {
    await start('de-DE');
    await page.getByRole('searchbox', { name: 'Ort suchen' }).fill('italien');
    await page.getByText('1 gefunden').waitFor();
    await page.getByRole('radio', { name: /^Po Valley/ }).check();
    await figuresAfter(page, before);
    await page.getByText('Wetter von Po Valley, Italy:').waitFor();
    const zone = page.getByRole('combobox', { name: 'Zeitzone' });
    expect(await zone.locator('option:checked').innerText()).toBe('Rom');
    const italy = await houseFigures(page);
    await paste(
      page.getByRole('textbox', { name: 'Höhe in Zeile 1', exact: true }),
      '90 2\n180 4,5',
    );
    await page.getByText('Der Horizont reicht in Richtung 180° bis 4,5° hinauf.').first().waitFor();
    await figuresAfter(page, italy);
    await set('Höhe in Zeile 2', '3,25');
    await page.getByText('bis 3,25° hinauf').first().waitFor();
    await set('Höhe in Zeile 2', '95');
    await page.getByText('Höhe in Zeile 2:').waitFor();
    expect(app.errors).toEqual([]);
  });

  it('a file is checked and taken', async () => {
    await start('de-DE');
    await page.getByRole('radio', { name: /Stundendatei/ }).check();
    await page
      .getByRole('group', { name: /hier ablegen/ })
      .locator('input[type=file]')
      .setInputFiles({ name: 'jahr.csv', mimeType: 'text/csv', buffer: Buffer.from(tmy3Text()) });
    await page.getByRole('heading', { name: 'jahr.csv, gelesen als TMY3-Datei' }).waitFor();
    const checks = page.getByRole('list', { name: 'Prüfungen der Datei' });
    await checks.getByText('Die Nächte sind dunkel.').waitFor();
    await page.getByText(/Einstrahlung im Jahr \d+ kWh\/m².*Wind im Mittel \d,\d m\/s/).waitFor();
    await page.getByRole('button', { name: 'Dieses Wetter übernehmen' }).click();
    await figuresAfter(page, before);
    await page.getByText('Wetter aus der Datei jahr.csv.').waitFor();
    expect(app.errors).toEqual([]);
  });
});

/**
 * Waits for figures that were there before a reload. Where the project was kept before they were
 * computed, those of its last computed state stand there first.
 */
async function figuresAgain(figures: string): Promise<void> {
  await page.waitForFunction(
    (wanted) => document.querySelector<HTMLElement>('#figures tr.house')?.innerText === wanted,
    figures,
  );
}

/** Pastes a text into a field as the clipboard would. */
async function paste(target: ReturnType<Page['locator']>, text: string): Promise<void> {
  await target.evaluate((input, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text', pasted);
    input.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    );
  }, text);
}
