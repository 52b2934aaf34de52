import type { DrillState, ExerciseState } from '../drill/drill-state.js';
import { untouched } from '../drill/drill-state.js';

type Texts = ExerciseState['texts'];
/** Texts, what was marked (0: the same), tries, score, hinted and shown as bits; 0 for an exercise not begun. */
type Packed = 0 | readonly [texts: Texts, marked: Texts | 0, tries: number, score: number, bits: number];
type PackedState = readonly [string, string, number, number, number, number, readonly Packed[]];

/** Told in front of every stored state, so that a later form can be told from this one. */
const FORM = 1;

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

function packExercise(each: ExerciseState): Packed {
  if (same(each, untouched)) return 0;
  const { texts, marked, tries, score, hinted, shown } = each;
  return [texts, same(texts, marked) ? 0 : marked, tries, Math.round(score * 1e4) / 1e4, (hinted ? 1 : 0) + (shown ? 2 : 0)];
}

function packState({ seed, kind, level, count, at, seconds, exercises }: DrillState): PackedState {
  return [seed, kind, level, count, at, Math.round(seconds), exercises.map(packExercise)];
}

/** What can be done without where room is short: first what was typed but not marked, then every text. */
const lighter: readonly ((each: ExerciseState) => ExerciseState)[] = [
  (each) => each,
  (each) => ({ ...each, texts: each.marked }),
  (each) => ({ ...each, texts: {}, marked: {} }),
];

/** The states of a lesson's drills as text of at most `limit` characters; null where they do not fit. */
export function packStates(states: readonly DrillState[], limit: number): string | null {
  for (const lighten of lighter) {
    const text = JSON.stringify([FORM, ...states.map((state) => packState({ ...state, exercises: state.exercises.map(lighten) }))]);
    if (text.length <= limit) return text;
  }
  return null;
}

function unpackExercise(packed: unknown): unknown {
  if (!Array.isArray(packed)) return untouched;
  const [texts, marked, tries, score, bits] = packed as unknown[];
  return { texts, marked: marked === 0 ? texts : marked, tries, score, hinted: (Number(bits) & 1) !== 0, shown: (Number(bits) & 2) !== 0 };
}

function unpackState(packed: unknown): DrillState | null {
  if (!Array.isArray(packed) || !Array.isArray(packed[6])) return null;
  const [seed, kind, level, count, at, seconds, exercises] = packed as [...unknown[], unknown[]];
  // The drill itself reads every part with suspicion.
  return { seed, kind, level, count, at, seconds, exercises: (exercises as unknown[]).map(unpackExercise) } as unknown as DrillState;
}

/** What a platform kept; none where it is empty or not ours. */
export function unpackStates(text: string): DrillState[] {
  try {
    const [form, ...states] = JSON.parse(text) as unknown[];
    return form === FORM ? states.flatMap((each) => unpackState(each) ?? []) : [];
  } catch {
    return [];
  }
}
