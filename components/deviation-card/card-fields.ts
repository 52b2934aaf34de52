import { understood } from '../../core/text/reading.js';
import { deviationTableField } from '../shared/deviation-table-field.js';
import type { Field } from '../shared/field.js';
import { dateField, numberField } from '../shared/trade-fields.js';

/** Words as they are typed: a name, a place, a remark. */
const wordsField: Field<string> = {
  parse: (text) => understood(text.trim()),
  write: (value) => String(value),
  show: () => '',
  accepted: '',
};

/** The fields of a card by the property each stands for. */
export const cardFields = {
  table: deviationTableField,
  vessel: wordsField,
  compassName: wordsField,
  serial: wordsField,
  place: wordsField,
  date: dateField,
  horizontal: numberField(0, 100, 0.1, 1, 'µT', 'accepted.microtesla'),
  vertical: numberField(-100, 100, 0.1, 1, 'µT', 'accepted.microtesla'),
  remarks: wordsField,
};
