import type { LubberElement } from '../shared/lubber-element.js';
import { crossAfter, startOf } from './map-cross.js';
import type { MapPlace } from './map-view-names.js';
import type { MapLayout } from './map-views.js';

/** The map under the hand. */
interface MapUnderHand {
  layout(): MapLayout;
  picked(): MapPlace | null;
  /** The user has chosen a place. */
  pick(place: MapPlace): void;
  /** The cross-hair has come to a place. */
  pass(place: MapPlace): void;
}

/** A pointer finds a place to about a pixel; more figures would pretend. */
const tenths = (degrees: number): number => Math.round(degrees * 10) / 10;

/** Picks a place on the map: by pointer, or by a cross-hair that keys move. */
export class MapHand {
  /** Where the cross-hair is; null where none is shown. */
  cross: MapPlace | null = null;

  readonly #host: LubberElement;
  readonly #map: MapUnderHand;

  constructor(host: LubberElement, map: MapUnderHand) {
    this.#host = host;
    this.#map = map;
  }

  #moveTo(place: MapPlace | null): void {
    this.cross = place;
    this.#host.requestUpdate();
  }

  readonly onBlur = (): void => this.#moveTo(null);

  readonly onClick = (event: MouseEvent): void => {
    const layout = this.#map.layout();
    const box = (event.currentTarget as HTMLElement).querySelector('svg')?.getBoundingClientRect();
    if (!box) return;
    const scale = layout.width / box.width;
    const place = layout.place((event.clientX - box.left) * scale, (event.clientY - box.top) * scale);
    if (!place) return;
    this.#moveTo(null);
    this.#map.pick({ latitude: tenths(place.latitude), longitude: tenths(place.longitude) });
  };

  readonly onKey = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const { view } = this.#map.layout();
    const from = this.cross ?? this.#map.picked() ?? startOf(view);
    const to = crossAfter(event.key, event.shiftKey, from, view);
    if (to) {
      this.#moveTo(to);
      this.#map.pass(to);
    } else if (event.key === 'Enter' || event.key === ' ') {
      this.#moveTo(null);
      this.#map.pick(from);
    } else if (event.key === 'Escape' && this.cross) this.#moveTo(null);
    else return;
    event.preventDefault();
  };
}
