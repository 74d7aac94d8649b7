import { describe, expect, it } from 'vitest';
import { guessTable, previewTable } from '../../../../lib/climate/index.ts';
import type { Quantity } from '../../../../lib/climate/index.ts';
import {
  plainLayout,
  timeKinds,
  withColumn,
  withTimeKind,
  withTimePart,
  withUnit,
} from '../../../../src/app/site/layout.ts';
import { inventedSite, lines, tableRows, tableText } from '../../../lib/climate/read/synthetic.ts';

describe('pointing at the columns of a table', () => {
  it('makes by hand the layout that the reader guesses by itself', () => {
    const columns: Quantity[] = ['ghi', 'dni', 'dhi', 'dryBulb', 'wind'];
    let layout = withTimeKind(plainLayout(tableText()), 'stamp');
    columns.forEach((quantity, i) => (layout = withColumn(layout, quantity, i + 1)));
    const { layout: guessed } = guessTable(tableText());
    expect({ ...layout, stamp: guessed.stamp, utcOffset: guessed.utcOffset }).toEqual(guessed);
  });

  it('reads a table without any heading once it is pointed at', () => {
    const text = lines(tableRows());
    let layout = { ...withTimeKind(plainLayout(text), 'stamp'), headerLines: 0 };
    expect(previewTable(text, layout, inventedSite).year).toBeUndefined();
    layout = withColumn(withColumn(layout, 'dni', 2), 'dhi', 3);
    layout = { ...withColumn(layout, 'dryBulb', 4), stamp: 'start' };
    expect(
      previewTable(text, layout, inventedSite).checks.filter((c) => c.level === 'error'),
    ).toEqual([]);
  });

  it('keeps the unit when the column changes, and forgets it with the column', () => {
    const start = withUnit(withColumn(plainLayout('a,b'), 'dryBulb', 1), 'dryBulb', 'F');
    expect(withColumn(start, 'dryBulb', 0).columns.dryBulb).toEqual({ column: 0, unit: 'F' });
    const none = withColumn(start, 'dryBulb', undefined);
    expect(none.columns.dryBulb).toBeUndefined();
    expect(withUnit(none, 'dryBulb', 'K')).toBe(none);
    expect(withColumn(none, 'dryBulb', 0).columns.dryBulb).toEqual({ column: 0, unit: 'C' });
  });

  it('changes how the time is told, and each of its parts', () => {
    for (const { value, parts } of timeKinds) {
      let layout = withTimeKind(plainLayout('a;b'), value);
      expect(layout.time?.kind ?? 'none').toBe(value);
      parts.forEach((name, i) => (layout = withTimePart(layout, name, i + 3)));
      const time = layout.time as Record<string, unknown> | undefined;
      parts.forEach((name, i) => expect(time?.[name]).toBe(i + 3));
    }
  });

  it('finds the delimiter that parts the most cells', () => {
    expect(plainLayout('a;b;c\n1,5;2;3\n').delimiter).toBe(';');
    expect(plainLayout('a\tb\n1\t2\n').delimiter).toBe('\t');
    expect(plainLayout('a b\n1 2\n').delimiter).toBe(' ');
  });
});
