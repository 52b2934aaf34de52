import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { crossPath } from './map-cross.js';
import type { MapDrawing } from './map-drawing.js';
import type { MapGround } from './map-ground.js';
import type { MapLines } from './map-levels.js';
import { polesView } from './map-poles.js';
import type { MapPlace } from './map-view-names.js';
import type { MapLayout } from './map-views.js';

export interface MapPicture {
  readonly layout: MapLayout;
  readonly ground: MapGround;
  /** Null where no model holds for the date: the map then shows land only. */
  readonly drawing: MapDrawing | null;
  readonly lines: MapLines;
  readonly picked: MapPlace | null;
  /** The cross-hair, while the map is being worked by keys. */
  readonly cross: MapPlace | null;
}

/**
 * The map as vectors: sharp in print and on dense screens, and its colours follow theme,
 * print and forced colours by themselves, which a canvas would have to be told.
 */
export function mapPicture({ layout, ground, drawing, lines, picked, cross }: MapPicture): TemplateResult {
  const at = picked && layout.shows(picked) ? layout.point(picked) : null;
  const cursor = cross && layout.shows(cross) ? layout.point(cross) : null;
  // A label half under the mark of the place would be misread.
  const isClear = ({ x, y }: { readonly x: number; readonly y: number }): boolean => !at || Math.hypot(x - at[0], y - at[1]) > 26;
  return html`<svg viewBox="0 0 ${layout.width} ${layout.height}" width="${layout.width / 16}em" aria-hidden="true" class="map">
    <defs>
      <pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line y2="6" class="hatching"></line>
      </pattern>
      <pattern id="crosshatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <line y2="6" class="hatching"></line>
 </pattern>
      <clipPath id="inside"><path d=${layout.outline}></path></clipPath>
    </defs>
    <path class="sea" d=${layout.outline}></path>
    <g clip-path="url(#inside)">
    <path class="land" d=${ground.land}></path>
    <path class="graticule" d=${ground.graticule}></path>
    ${drawing
      ? svg`<path class="zone" fill="url(#hatch)" d=${drawing.caution}></path>
          <path class="zone" fill="url(#crosshatch)" d=${drawing.blackout}></path>
          <path class="line negative" d=${drawing.lines.negative}></path>
          <path class="line positive" d=${drawing.lines.positive}></path>
          ${lines === 'dip' ? nothing : svg`<path class="line zero" d=${drawing.lines.zero}></path>`}
          <path class="equator" d=${drawing.equator}></path>`
      : nothing}
    ${cross ? svg`<path class="cross" d=${crossPath(layout, cross)}></path>` : nothing}
    </g>
    <path class="outline" d=${layout.outline}></path>
    ${drawing
      ? svg`${polesView(layout, drawing.poles)}
          ${drawing.labels.filter(isClear).map(
            (label) => svg`<text class="level" x=${label.x.toFixed(1)} y=${label.y.toFixed(1)} dy="0.34em" text-anchor="middle"
              transform="rotate(${label.turn.toFixed(1)} ${label.x.toFixed(1)} ${label.y.toFixed(1)})">${label.text}</text>`,
          )}`
      : nothing}
    ${ground.figures.map((figure) => svg`<text class="soft" x=${figure.x.toFixed(1)} y=${figure.y.toFixed(1)} text-anchor=${figure.anchor}>${figure.text}</text>`)}
    ${cursor ? svg`<circle class="cursor" cx=${cursor[0]} cy=${cursor[1]} r="7"></circle>` : nothing}
    ${at ? svg`<circle class="halo" cx=${at[0]} cy=${at[1]} r="8"></circle><circle class="picked" cx=${at[0]} cy=${at[1]} r="6"></circle><circle class="picked dot" cx=${at[0]} cy=${at[1]} r="1.6"></circle>` : nothing}
  </svg>`;
}
