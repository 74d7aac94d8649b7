import { describe, expect, it } from 'vitest';
import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import { parseProject } from '../../../lib/project/index.ts';
import { CELLS, QUARTERS, withBlock } from '../../../src/app/charts/schedule/cells.ts';
import { blockWords, cellWords, describeGrid } from '../../../src/app/charts/schedule/describe.ts';
import { gridTable } from '../../../src/app/schedules/gridTable.ts';
import { makeGroup } from '../../../src/app/schedules/groupEdits.ts';
import { paintedRule } from '../../../src/app/schedules/ruleEdits.ts';
import { deleteSchedule, newSchedule } from '../../../src/app/schedules/scheduleEdits.ts';
import { stations } from '../../../src/library/climates.ts';
import { blinds, glazings } from '../../../src/library/index.ts';
import { Words } from '../../../src/words/index.ts';

const english = await Words.load('en', ['schedules']);
const german = await Words.load('de', ['schedules']);

describe('new names', () => {
  const [t, de] = [english, german].map((words) => words.of('schedules'));

  it('are in the language of the page and numbered', () => {
    const p = parseProject(structuredClone(studio), { glazings, blinds, stations });
    // The west group, which must follow something, gets a schedule that leaves it raised.
    deleteSchedule(de, p, 'west-afternoon');
    makeGroup(t, p, ['east-bench']);
    makeGroup(t, p, ['east-bench']);
    makeGroup(de, p, ['south-long']);
    for (const say of [t, de, de]) newSchedule(say, p, 'blind:roof-light');
    expect(p.groups.slice(1).map((g) => g.name)).toEqual([
      'East group',
      'East group 2',
      'Gruppe South',
    ]);
    expect(p.schedules.slice(-4).map((s) => s.name)).toEqual([
      'Ganzjährig oben',
      'New schedule',
      'Neuer Zeitplan',
      'Neuer Zeitplan 2',
    ]);
    expect(paintedRule(de, new Uint8Array(CELLS)).name).toBe('Gemalte Stunden');
  });
});

describe('the grid in words', () => {
  const gain = { digits: 1, symbol: 'W/m²', show: (value: number) => value };
  /** Sun on three of four days of June from 14:00 to 16:00, with 1,234.5 W/m² from 15:00 on. */
  const sun = { sun: new Float64Array(CELLS), gain: new Float64Array(CELLS) };
  const june = 5 * QUARTERS;
  sun.sun.fill(0.75, june + 56, june + 64);
  sun.gain.fill(411.5, june + 56, june + 60).fill(1234.5, june + 60, june + 64);
  const block = { months: [5, 5] as [number, number], quarters: [60, 63] as [number, number] };
  const cells = withBlock(new Uint8Array(CELLS), block, true);

  it('names months and hours', () => {
    const spring = { months: [3, 5] as [number, number], quarters: [58, 78] as [number, number] };
    expect(blockWords(english, spring)).toBe('April to June, 14:30 to 19:45');
    expect(blockWords(german, spring)).toBe('April bis Juni, 14:30 bis 19:45');
    expect(blockWords(english, block)).toBe('June, 15:00 to 16:00');
  });

  it('tells what holds at a cell', () => {
    const at = (words: Words, cell: number) => cellWords(words, cell, cells, 8, sun, gain);
    expect(at(english, june + 56)).toBe(
      'Partly painted. Sun on the facade on 75\u00a0% of days, 823.0\u00a0W/m² without shading',
    );
    expect(at(german, june + 56)).toBe(
      'Teilweise gemalt. Sonne auf der Fassade an 75\u00a0% der Tage, 823,0\u00a0W/m² ohne Sonnenschutz',
    );
    expect(cellWords(german, june, cells, 1, undefined, gain)).toBe('Nicht gemalt');
  });

  it('tells the strongest sun and the part of it that is painted', () => {
    // An hour of June is four of 1,152 cells: 0.35 %. It brings 3 of 4 parts of the gain.
    expect(describeGrid(english, cells, sun, gain)).toBe(
      'Most comes in June at 15:00: 1,234.5\u00a0W/m² on average without shading. ' +
        'Painted: 0\u00a0% of the year, with 75\u00a0% of its bare gain.',
    );
    expect(describeGrid(german, cells, sun, gain)).toBe(
      'Am meisten kommt im Juni um 15:00 Uhr: im Mittel 1.234,5\u00a0W/m² ohne Sonnenschutz. ' +
        'Gemalt: 0\u00a0% des Jahres, darin 75\u00a0% des Gewinns ohne Sonnenschutz.',
    );
    const bare = new Uint8Array(CELLS);
    expect(describeGrid(english, bare, undefined, gain)).toBe('No hour is painted.');
    const night = { sun: new Float64Array(CELLS), gain: new Float64Array(CELLS) };
    expect(describeGrid(english, bare, night, gain)).toBe(
      'No sun gets through. No hour is painted.',
    );
  });

  it('stands in a table in the language of the page', () => {
    const row = (words: Words) => {
      const table = gridTable(words, cells, sun, gain);
      return table.columns.map(({ head }, i) => `${head}: ${table.cell(june + 60, i)}`);
    };
    expect(row(english)).toEqual([
      'Month: June',
      'From: 15:00',
      'To: 15:15',
      'Painted: yes',
      'Days with sun on the facade (%): 75',
      'Gain without shading (W/m²): 1234.5',
    ]);
    expect(row(german).slice(0, 4)).toEqual([
      'Monat: Juni',
      'Von: 15:00',
      'Bis: 15:15',
      'Gemalt: ja',
    ]);
  });
});
