import { adjustedSwing } from '../../core/swing/adjusted-swing.js';
import type { AdjustedSwing } from '../../core/swing/adjusted-swing.js';
import type { StageName } from './swing-sheet.js';
import type { SwingState } from './swing-state.js';
import { SwingWork } from './worked-swing.js';
import type { WorkedSwing } from './worked-swing.js';

/** One round of readings and what it came to. */
export interface WorkedRound {
  readonly state: SwingState;
  readonly worked: WorkedSwing;
}

/** Every round of a swing; `found` is null where there is one only. */
export interface WorkedRounds {
  readonly left: WorkedRound;
  readonly found: WorkedRound | null;
  /** What holds now; null while nothing is read. */
  readonly whole: AdjustedSwing | null;
}

/** Works out the rounds of a swing, each once for the same readings and settings. */
export class RoundsWork {
  readonly #works: Readonly<Record<StageName, SwingWork>> = { found: new SwingWork(), left: new SwingWork() };

  #round(state: SwingState): WorkedRound {
    return { state, worked: this.#works[state.stage].of(state) };
  }

  of(stateOf: (stage: StageName) => SwingState, two: boolean): WorkedRounds {
    const left = this.#round(stateOf('left'));
    const found = two ? this.#round(stateOf('found')) : null;
    return { left, found, whole: adjustedSwing(found?.worked.result ?? null, left.worked.result, two) };
  }
}

/** The round that holds: as left once something of it is worked out. */
export function roundThatHolds({ left, found, whole }: WorkedRounds): WorkedRound {
  return whole?.stage === 'found' && found ? found : left;
}
