import assert from 'node:assert/strict';
import { test } from 'node:test';
import { magneticElements, magneticField } from '../../../core/field/magnetic-field.js';
import type { MagneticField } from '../../../core/field/magnetic-field.js';
import { instantOfDecimalYear } from '../../../core/time/decimal-year.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { fieldReference } from './field-reference.js';
import type { FieldLine } from './field-reference.js';

function fieldAt(line: FieldLine, instant: Date): MagneticField {
  const place = { latitude: line.lat, longitude: line.lon, heightKm: line.alt_km };
  return magneticField(place, instant, { model: line.model });
}

/** What each figure may be off by. */
interface Tolerances {
  readonly intensity: number;
  readonly angle: number;
  readonly intensityChange: number;
  readonly angleChange: number;
}

function assertLine(field: MagneticField, line: FieldLine, allowed: Tolerances): void {
  const where = `${line.model} ${line.decimal_year} ${line.lat} ${line.lon} ${line.alt_km} km`;
  assertClose(field.x, line.X, allowed.intensity, `${where} X`);
  assertClose(field.y, line.Y, allowed.intensity, `${where} Y`);
  assertClose(field.z, line.Z, allowed.intensity, `${where} Z`);
  assertClose(field.h, line.H, allowed.intensity, `${where} H`);
  assertClose(field.f, line.F, allowed.intensity, `${where} F`);
  assertSameDirection(field.variation as number, line.D, allowed.angle, `${where} D`);
  assertClose(field.inclination, line.I, allowed.angle, `${where} I`);
  const { annualChange: change } = field;
  assertClose(change.x, line.dX, allowed.intensityChange, `${where} dX`);
  assertClose(change.y, line.dY, allowed.intensityChange, `${where} dY`);
  assertClose(change.z, line.dZ, allowed.intensityChange, `${where} dZ`);
  assertClose(change.h as number, line.dH, allowed.intensityChange, `${where} dH`);
  assertClose(change.f, line.dF, allowed.intensityChange, `${where} dF`);
  assertClose(change.variation as number, line.dD, allowed.angleChange, `${where} dD`);
  assertClose(change.inclination as number, line.dI, allowed.angleChange, `${where} dI`);
}

const linesOf = (model: string) => fieldReference.official.filter((line) => line.model === model);

test('all 100 official lines of WMM2025: intensities to 0.001 nT, angles and changes to their print', () => {
  // The official program's own residue in X is up to 0.00072 nT (header of the reference file),
  // and its changes of H differ by 1.5e-6 for the same reason; D and I are printed to 0.01°.
  const lines = linesOf('WMM2025');
  assert.equal(lines.length, 100);
  for (const line of lines) {
    const allowed = { intensity: 0.001, angle: 0.00501, intensityChange: 2e-6, angleChange: 5.1e-7 };
    assertLine(fieldAt(line, instantOfDecimalYear(line.decimal_year)), line, allowed);
  }
});

test('the official lines of WMM2020, WMM2015v2 and plain WMM2015, all to their print', () => {
  const older = [...linesOf('WMM2020'), ...linesOf('WMM2015v2'), ...linesOf('WMM2015')];
  assert.equal(older.length, 136);
  for (const line of older) {
    // The test file of 2020 prints changes of angles to 0.1°, the reports to 0.01°. Three of the
    // 12 lines in the report of 2020 are rounded otherwise than the definition: -0.10 for
    // -0.09443, and twice 0.08 for 0.07498.
    const residue = line.model === 'WMM2020' ? 0.0006 : 0;
    const angleChange = line.source.includes('report') ? 0.00501 + residue : 0.0501;
    const allowed = { intensity: 0.0501, angle: 0.00501, intensityChange: 0.0501, angleChange };
    assertLine(fieldAt(line, instantOfDecimalYear(line.decimal_year)), line, allowed);
  }
});

test('150 places of an independent evaluation of WMM2025, poles, seams and leap years among them', () => {
  assert.equal(fieldReference.random_wmm2025.length, 150);
  for (const line of fieldReference.random_wmm2025) {
    const field = fieldAt({ ...line, model: 'WMM2025' }, new Date(line.utc));
    assertLine(field, line, { intensity: 1.1e-6, angle: 1e-8, intensityChange: 1.1e-6, angleChange: 1e-8 });
  }
});

test('the worked example of the WMM2025 report, table 3b, to all its figures', () => {
  const line = fieldReference.table3b;
  const { annualChange, ...field } = fieldAt(line, instantOfDecimalYear(line.decimal_year));
  assertClose(field.x, line.X, 1e-9);
  assertClose(field.y, line.Y, 1e-9);
  assertClose(field.z, line.Z, 1e-9);
  assertClose(field.f, line.F, 1e-9);
  assertClose(field.h, line.H, 1e-9);
  assertClose((field.variation as number) * (Math.PI / 180), line.D_rad, 1e-10);
  assertClose(field.inclination * (Math.PI / 180), line.I_rad, 1e-10);
  assertClose(annualChange.x, line.dX, 1e-9);
  assertClose(annualChange.y, line.dY, 1e-9);
  assertClose(annualChange.z, line.dZ, 1e-9);
  assertClose(annualChange.f, line.dF, 1e-9);
  assertClose((annualChange.variation as number) * (Math.PI / 180), line.dD_rad, 1e-10);
});

test('the elements alone are those of the whole field', () => {
  for (const line of fieldReference.official.slice(0, 20)) {
    const instant = instantOfDecimalYear(line.decimal_year);
    const field = fieldAt(line, instant);
    const alone = magneticElements({ latitude: line.lat, longitude: line.lon, heightKm: line.alt_km }, instant);
    const { x, y, z, h, f, variation, declination, inclination } = field;
    assert.deepEqual(alone, { x, y, z, h, f, variation, declination, inclination });
  }
});
