import { quantity } from '../working/quantity.js';
import type { Unit } from '../working/quantity.js';
import type { Column, Given } from './exercise.js';

export function given(code: string, value: number, unit: Unit): Given {
  return { code, value: { is: 'quantity', quantity: quantity(value, unit) } };
}

export function givenWord(code: string, word: string): Given {
  return { code, value: { is: 'word', word } };
}

export function givenText(code: string, text: string): Given {
  return { code, value: { is: 'text', text } };
}

export function givenTable(code: string, columns: readonly Column[], rows: readonly (readonly number[])[]): Given {
  return { code, value: { is: 'table', columns, rows } };
}
