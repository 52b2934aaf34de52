import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { closestAround } from './page-controller.js';
import { shipContext } from './ship-context.js';
import type { Ship } from './ship-context.js';

type Host = ReactiveControllerHost & HTMLElement;
type Hearing = (ship: Ship, leave?: () => void) => void;

/** The question of the community protocol for contexts, which whoever provides one listens for. */
class ContextRequest extends Event {
  readonly context = shipContext;
  readonly subscribe = true;
  readonly contextTarget: Element;
  readonly callback: Hearing;

  constructor(contextTarget: Element, callback: Hearing) {
    super('context-request', { bubbles: true, composed: true });
    this.contextTarget = contextTarget;
    this.callback = callback;
  }
}

/** Asks for the ship around a widget, and hears of it whenever she changes. */
export class ShipListener implements ReactiveController {
  ship: Ship | undefined;

  readonly #host: Host;
  #leave: (() => void) | undefined;

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    // Moved out of her ship a widget knows her no more; inside one it is told again at once.
    if (this.ship) this.#hear(undefined);
    this.#ask();
    void this.#awaitShip();
  }

  hostDisconnected(): void {
    this.#leave?.();
    this.#leave = undefined;
  }

  #ask(): void {
    this.#host.dispatchEvent(
      new ContextRequest(this.#host, (ship, leave) => {
        // Another one answers, which was defined late and stands nearer.
        if (leave !== this.#leave) this.#leave?.();
        this.#leave = leave;
        this.#hear(ship);
      }),
    );
  }

  #hear(ship: Ship | undefined): void {
    this.ship = ship;
    this.#host.requestUpdate();
  }

  /** A ship around the widget may be defined after it: then it is asked again. */
  async #awaitShip(): Promise<void> {
    const ship = closestAround(this.#host, 'lubber-ship:not(:defined)');
    if (!ship || ship === this.#host) return;
    await customElements.whenDefined('lubber-ship');
    if (this.#host.isConnected && !this.ship) this.#ask();
  }
}
