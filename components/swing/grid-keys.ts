import { readsFromRight } from '../shared/reads-from-right.js';

/** What a key in a cell of the grid asks for. */
export type GridKey =
  | { readonly to: 'cell'; readonly down: number; readonly across: number }
  | { readonly to: 'next line' | 'further' }
  | { readonly to: 'undo' | 'redo' }
  | null;

const move = (down: number, across: number): GridKey => ({ to: 'cell', down, across });

/** Whether the caret is where a sideways arrow leaves the cell: at its end, or all is selected. */
function leaves(input: HTMLInputElement, direction: 1 | -1): boolean {
  const { selectionStart: start, selectionEnd: end, value } = input;
  if (start === 0 && end === value.length) return true;
  return start === end && start === (direction > 0 ? value.length : 0);
}

/** Undo and redo, wherever in the readings the caret stands; null for any other key. */
export function undoKey(event: KeyboardEvent): { readonly to: 'undo' | 'redo' } | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  if (key === 'z') return { to: event.shiftKey ? 'redo' : 'undo' };
  return key === 'y' ? { to: 'redo' } : null;
}

/** Arrows, Enter and undo as in a spreadsheet; going further by Tab is the browser's own. Sideways arrows go where they point. */
export function gridKey(event: KeyboardEvent, input: HTMLInputElement): GridKey {
  if (event.ctrlKey || event.metaKey || event.altKey) return undoKey(event);
  const onwards = readsFromRight(input.closest('tr')) ? -1 : 1;
  switch (event.key) {
    case 'Enter':
      return event.shiftKey ? move(-1, 0) : { to: 'next line' };
    case 'Tab':
      return event.shiftKey ? null : { to: 'further' };
    case 'ArrowDown':
      return move(1, 0);
    case 'ArrowUp':
      return move(-1, 0);
    case 'ArrowRight':
      return !event.shiftKey && leaves(input, 1) ? move(0, onwards) : null;
    case 'ArrowLeft':
      return !event.shiftKey && leaves(input, -1) ? move(0, -onwards) : null;
    default:
      return null;
  }
}
