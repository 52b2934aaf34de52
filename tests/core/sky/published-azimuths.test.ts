import { test } from 'node:test';
import { wrap360 } from '../../../core/angle/wrap.js';
import { altitudeAzimuth } from '../../../core/sky/altitude-azimuth.js';
import type { BodyName } from '../../../core/sky/body.js';
import { geographicalPosition } from '../../../core/sky/geographical-position.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

interface Printed {
  id: string;
  topic: string;
  source: string;
  seen: boolean;
  inputs: {
    utc?: string;
    body?: string;
    lat_deg: number;
    long_deg?: number;
    dec_deg: number;
    lha_deg?: number;
    hour_angle_deg?: number;
    dec_used_deg?: number;
    compass_bearing?: number;
    variation?: number;
    gyro_bearing?: number;
  };
  expected: Record<string, number | Record<string, number>>;
  tolerance: { deg: number };
}

const cases = reference<{ cases: Printed[] }>('sky-published.json').cases.filter(({ topic }) => topic.startsWith('azimuth'));

function printed(id: string): Printed {
  const found = cases.find((item) => item.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
}

function bearing(latitude: number, declination: number, localHourAngle: number): number {
  return altitudeAzimuth({ latitude, declination, localHourAngle }).azimuth ?? NaN;
}

function bearingAt({ inputs }: Printed): number {
  const { gha, declination } = geographicalPosition((inputs.body ?? 'Polaris') as BodyName, new Date(inputs.utc ?? NaN));
  return bearing(inputs.lat_deg, declination, wrap360(gha + (inputs.long_deg ?? NaN)));
}

/** Whether the printed answer itself was seen decides how far a case is proof. */
const proof = ({ seen, source, id }: Printed): string => `${source} (${id}, ${seen ? 'seen in print' : 'answer not seen: a check of regression only'})`;

for (const id of ['az-qm-229', 'az-bow-1701']) {
  const item = printed(id);
  test(`${proof(item)}: Zn ${String(item.expected['Zn_deg'])}°`, () => {
    const { lat_deg, dec_deg, lha_deg = NaN } = item.inputs;
    assertSameDirection(bearing(lat_deg, dec_deg, lha_deg), item.expected['Zn_deg'] as number, item.tolerance.deg);
  });
}

test(`${proof(printed('az-suntab-ex'))}: true bearing 125°34′`, () => {
  const { inputs, expected, tolerance } = printed('az-suntab-ex');
  assertSameDirection(bearing(inputs.lat_deg, inputs.dec_used_deg ?? NaN, inputs.hour_angle_deg ?? NaN), expected['true_bearing'] as number, tolerance.deg);
});

for (const id of ['az-suntab-38-0856', 'az-suntab-38-0820', 'az-suntab-38-0800']) {
  const item = printed(id);
  test(`${proof(item)}: twelve printed bearings, to the minute`, () => {
    for (const [declination, expected] of Object.entries(item.expected['azimuth_from_N_to_E'] as Record<string, number>)) {
      const found = bearing(item.inputs.lat_deg, Number(declination), item.inputs.hour_angle_deg ?? NaN);
      assertSameDirection(found, expected, item.tolerance.deg, `d ${declination}`);
    }
  });
}

test(`${proof(printed('az-suntab-32'))}: eleven printed bearings`, () => {
  const { inputs, expected, tolerance } = printed('az-suntab-32');
  for (const [entry, azimuth] of Object.entries(expected['azimuth'] as Record<string, number>)) {
    // "05:56 dec+3": apparent time before noon, and declination of the same name as the latitude.
    const [, hours, minutes, declination] = /^(\d+):(\d+) dec\+(\d+)$/.exec(entry) ?? [];
    const hourAngle = 15 * (Number(hours) + Number(minutes) / 60 - 12);
    assertSameDirection(bearing(inputs.lat_deg, Number(declination), hourAngle), azimuth, tolerance.deg, entry);
  }
});

test(`${proof(printed('az-lin-ce'))}: Zn 80°, to the whole degree`, () => {
  const { inputs, expected, tolerance } = printed('az-lin-ce');
  assertSameDirection(bearing(inputs.lat_deg, inputs.dec_deg, inputs.lha_deg ?? NaN), expected['Zn'] as number, tolerance.deg);
});

test(`${proof(printed('az-lin-1919'))}: N 101°30′ W, by a table of whole degrees`, () => {
  const { inputs, expected, tolerance } = printed('az-lin-1919');
  // 4h59m22s west.
  assertSameDirection(bearing(inputs.lat_deg, inputs.dec_deg, 15 * (4 + 59 / 60 + 22 / 3600)), expected['Zn'] as number, tolerance.deg);
});

test(`${proof(printed('az-uscg-0901'))}: deviation 2.1° E`, () => {
  const item = printed('az-uscg-0901');
  const { compass_bearing = NaN, variation = NaN } = item.inputs;
  assertClose(bearingAt(item) - compass_bearing - variation, item.expected['deviation'] as number, item.tolerance.deg);
});

// Of these the question and the choices were seen, the key was not: one choice alone fits.
for (const [id, gyroError] of [
  ['az-uscg-polaris-0205', -1.5],
  ['az-uscg-polaris-0723', 1.7],
] as const) {
  const item = printed(id);
  test(`${item.source} (${id}): Polaris gives an error of ${gyroError}°`, () => {
    const error = ((bearingAt(item) - (item.inputs.gyro_bearing ?? NaN) + 540) % 360) - 180;
    assertClose(error, gyroError, item.tolerance.deg);
  });
}

for (const item of cases.filter(({ id }) => /^az-uscg-(1106|0720|0916|0517)$/.test(id))) {
  test(`${proof(item)}: Zn ${String(item.expected['Zn'])}°`, () => {
    assertSameDirection(bearingAt(item), item.expected['Zn'] as number, item.tolerance.deg);
  });
}
