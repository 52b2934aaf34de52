import { roundTo } from '../../core/angle/format-angle.js';
import type { AnswerForm } from '../../core/answer/question.js';
import { readAnswer } from '../../core/answer/mark.js';
import type { Field } from '../shared/field.js';
import { signedText } from '../shared/signed-text.js';
import { bearingField, errorField } from '../shared/trade-fields.js';
import { typedSigned } from './answer-text.js';

/** A coefficient: degrees with + or −; east and west are understood too. */
const signedField: Field<number> = {
  parse: (text) => {
    const reading = readAnswer('signed', text);
    return !reading.ok && reading.refusal === 'letter-missing' ? { ok: false, refusal: 'sign-missing' } : reading;
  },
  write: typedSigned,
  show: (value) => signedText(value),
  step: (value, direction) => roundTo(value + direction * 0.1, 1),
  accepted: 'drill.accepted.signed',
  inputMode: 'text',
};

export const answerFields: Readonly<Record<AnswerForm, Field<number>>> = {
  bearing: bearingField(''),
  error: errorField,
  signed: signedField,
};
