export type Shortcut = 'undo' | 'redo' | 'save' | 'open';

/** The workbench's own use of a key press, if any; Ctrl, or Command on Apple keyboards. */
export function shortcutOf(event: {
  key: string;
  ctrlKey: boolean;
  metaKey: boolean;
  shiftKey: boolean;
  altKey: boolean;
}): Shortcut | undefined {
  if (event.altKey || event.ctrlKey === event.metaKey) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  if (event.shiftKey) return undefined;
  if (key === 'y') return 'redo';
  if (key === 's') return 'save';
  return key === 'o' ? 'open' : undefined;
}
