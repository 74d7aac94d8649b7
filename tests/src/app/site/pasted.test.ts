import { describe, expect, it } from 'vitest';
import { pastedNumbers, pastedPairs } from '../../../../src/app/site/pasted.ts';

describe('a pasted row or column', () => {
  it.each([
    ['a row of a spreadsheet', '1\t2\t3', [1, 2, 3]],
    ['a column of a spreadsheet', '1\r\n2\r\n3\r\n', [1, 2, 3]],
    ['decimal commas', '1,5\t2,25\t-3', [1.5, 2.25, -3]],
    ['decimal commas in a column', '1,5\n2,5', [1.5, 2.5]],
    ['commas between', '1.5, 2.5, 3', [1.5, 2.5, 3]],
    ['blanks between', '1.5 2.5  3', [1.5, 2.5, 3]],
    ['semicolons between', '1,5;2,5', [1.5, 2.5]],
    ['decimal commas with blanks between', '1,5 2,25 -3', [1.5, 2.25, -3]],
    ['decimal commas after a label', 'Januar 1,5 2,25', [1.5, 2.25]],
    ['commas without blanks', '1,2,3', [1, 2, 3]],
    ['a label before commas', 'GHI, 1.5, 2.5', [1.5, 2.5]],
    ['a label in front', 'GHI\t1\t2', [1, 2]],
    ['a typeset minus', '\u22121\t2', [-1, 2]],
  ])('reads %s', (_, text, expected) => {
    expect(pastedNumbers(text)).toEqual(expected);
  });

  it.each([
    ['a single number', '12.5'],
    ['words', 'no numbers here'],
    ['a hole in the row', '1\tn/a\t3'],
    ['nothing', ''],
  ])('leaves %s to the field', (_, text) => {
    expect(pastedNumbers(text)).toBeUndefined();
  });
});

describe('two pasted columns', () => {
  it('reads pairs and leaves a heading out', () => {
    expect(pastedPairs('bearing\theight\n0\t12,5\n90\t3')).toEqual([
      [0, 12.5],
      [90, 3],
    ]);
    expect(pastedPairs('0 12,5\n90 3')).toEqual([
      [0, 12.5],
      [90, 3],
    ]);
    expect(pastedPairs('0, 12.5\n90, 3')).toEqual([
      [0, 12.5],
      [90, 3],
    ]);
  });

  it.each(['12', '1\t2\t3', '1\t2\n3', ''])('leaves "%s" to the field', (text) => {
    expect(pastedPairs(text)).toBeUndefined();
  });
});
