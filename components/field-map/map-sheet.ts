import { magneticModelYears } from '../../core/field/magnetic-models.js';
import type { MapDrawing } from './map-drawing.js';
import { drawMap } from './map-drawing.js';
import type { MapGround } from './map-ground.js';
import { mapGround } from './map-ground.js';
import type { MapLines } from './map-levels.js';
import { layOut } from './map-views.js';
import type { MapViewName } from './map-view-names.js';
import type { MapLayout } from './map-views.js';

/** A map laid out and drawn; what has not changed since the last time is kept. */
export class MapSheet {
  #ground: { readonly key: string; readonly layout: MapLayout; readonly ground: MapGround } | undefined;
  #drawing: { readonly key: string; readonly drawing: MapDrawing } | undefined;

  ground(view: MapViewName, width: number): { readonly layout: MapLayout; readonly ground: MapGround } {
    const key = `${view} ${width}`;
    if (this.#ground?.key !== key) {
      const layout = layOut(view, width);
      this.#ground = { key, layout, ground: mapGround(layout) };
    }
    return this.#ground;
  }

  /** Draws once for nothing. */
  warm(lines: MapLines, view: MapViewName, width: number): void {
    const { layout, ground } = this.ground(view, width);
    drawMap(lines, new Date(Date.UTC(magneticModelYears.until, 0, 1)), layout, ground.figures);
  }

  drawing(lines: MapLines, instant: Date, layout: MapLayout, figures: MapGround['figures']): MapDrawing {
    const key = `${lines} ${instant.getTime()} ${layout.view} ${layout.width}`;
    if (this.#drawing?.key !== key) this.#drawing = { key, drawing: drawMap(lines, instant, layout, figures) };
    return this.#drawing.drawing;
  }
}
