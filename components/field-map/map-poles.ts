import { nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { MagneticPoles } from '../../core/field/magnetic-poles.js';
import { isPolar } from './map-views.js';
import type { MapLayout } from './map-views.js';

export type PoleKind = 'dip' | 'geomagnetic' | 'geographic';

export const poleKinds: readonly PoleKind[] = ['dip', 'geomagnetic', 'geographic'];

/** The sign of a kind of pole around a point. */
export function poleSign(kind: PoleKind, x: number, y: number): TemplateResult<2> {
  if (kind === 'dip') return svg`<circle class="pole filled" cx=${x} cy=${y} r="4"></circle>`;
  if (kind === 'geomagnetic') return svg`<path class="pole open" d="M${x} ${y - 5}l5 5l-5 5l-5 -5z"></path>`;
  return svg`<path class="pole" d="M${x - 6} ${y}h12M${x} ${y - 6}v12"></path>`;
}

/** The poles on a map; in a world map the geographic poles are its upper and lower edge. */
export function polesView(layout: MapLayout, poles: MagneticPoles): TemplateResult<2> {
  const geographic = { latitude: layout.view === 'north' ? 90 : -90, longitude: 0 };
  const shown = [
    ...[poles.dip.north, poles.dip.south].map((pole) => ({ kind: 'dip' as const, pole })),
    ...[poles.geomagnetic.north, poles.geomagnetic.south].map((pole) => ({ kind: 'geomagnetic' as const, pole })),
    ...(isPolar(layout.view) ? [{ kind: 'geographic' as const, pole: geographic }] : []),
  ];
  return svg`${shown.map(({ kind, pole }) => {
    if (!layout.shows(pole)) return nothing;
    const [x, y] = layout.point(pole);
    return poleSign(kind, x, y);
  })}`;
}
