import { parseGyroError } from '../../core/angle/parse-gyro-error.js';
import type { Field } from './field.js';
import { errorField } from './trade-fields.js';

/** The error of a gyro, which officers also tell by its reading: `1.5 high`. */
export const gyroErrorField: Field<number> = { ...errorField, parse: parseGyroError };
