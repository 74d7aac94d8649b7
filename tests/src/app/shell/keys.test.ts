import { describe, expect, it } from 'vitest';
import { shortcutOf } from '../../../../src/app/shell/keys.ts';

const press = (key: string, held: Partial<Parameters<typeof shortcutOf>[0]> = {}) =>
  shortcutOf({ key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false, ...held });

describe('key presses of the workbench', () => {
  it('knows undo, redo, save and open, by Ctrl or Command', () => {
    for (const held of [{ ctrlKey: true }, { metaKey: true }]) {
      expect(press('z', held)).toBe('undo');
      expect(press('Z', { ...held, shiftKey: true })).toBe('redo');
      expect(press('y', held)).toBe('redo');
      expect(press('s', held)).toBe('save');
      expect(press('o', held)).toBe('open');
    }
  });

  it('leaves every other press alone', () => {
    expect(press('z')).toBeUndefined();
    expect(press('z', { ctrlKey: true, altKey: true })).toBeUndefined();
    expect(press('z', { ctrlKey: true, metaKey: true })).toBeUndefined();
    expect(press('S', { ctrlKey: true, shiftKey: true })).toBeUndefined();
    expect(press('a', { ctrlKey: true })).toBeUndefined();
  });
});
