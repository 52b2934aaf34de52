import type { ScoreDetail, ScoredAnswer } from '../shared/score-event.js';
import type { Cmi5Launch, LaunchData } from './cmi5-launch.js';
import { answerName, plainNumber } from './given-number.js';
import { isoDuration } from './lms-time.js';
import { randomUuid } from './random-uuid.js';
import type { Statement } from './record-store.js';
import { responseText, rightPattern } from './scorm2004.js';

/** cmi5 9.3: the verbs; `answered` is one of ours, which cmi5 allows beside its own. */
const verbs = {
  initialized: 'http://adlnet.gov/expapi/verbs/initialized',
  completed: 'http://adlnet.gov/expapi/verbs/completed',
  passed: 'http://adlnet.gov/expapi/verbs/passed',
  failed: 'http://adlnet.gov/expapi/verbs/failed',
  terminated: 'http://adlnet.gov/expapi/verbs/terminated',
  answered: 'http://adlnet.gov/expapi/verbs/answered',
} as const;

type Verb = keyof typeof verbs;
type Bag = Readonly<Record<string, unknown>>;

const CATEGORY = { cmi5: 'https://w3id.org/xapi/cmi5/context/categories/cmi5', moveOn: 'https://w3id.org/xapi/cmi5/context/categories/moveon' };
const MASTERY = 'https://w3id.org/xapi/cmi5/context/extensions/masteryscore';

const bag = (value: unknown): Bag => (typeof value === 'object' && value !== null ? (value as Bag) : {});
const list = (value: unknown): unknown[] => (Array.isArray(value) ? (value as unknown[]) : value === undefined ? [] : [value]);

/** Writes the statements of one session: the platform's context in each, the marks of cmi5 in its own. */
export class Cmi5Statements {
  readonly #launch: Cmi5Launch;
  readonly #data: LaunchData;

  constructor(launch: Cmi5Launch, data: LaunchData) {
    this.#launch = launch;
    this.#data = data;
  }

  #context(categories: readonly string[], extensions: Bag): Bag {
    const template = this.#data.contextTemplate;
    const activities = bag(template['contextActivities']);
    const category = [...list(activities['category']), ...categories.map((id) => ({ objectType: 'Activity', id }))];
    return {
      ...template,
      registration: this.#launch.registration,
      ...(category.length > 0 ? { contextActivities: { ...activities, category } } : {}),
      extensions: { ...bag(template['extensions']), ...extensions },
    };
  }

  #statement(verb: Verb, context: Bag, more: Bag = {}): Statement {
    return {
      id: randomUuid(),
      actor: this.#launch.actor,
      verb: { id: verbs[verb], display: { en: verb } },
      object: { objectType: 'Activity', id: this.#launch.activityId },
      context,
      timestamp: new Date().toISOString(),
      ...more,
    };
  }

  initialized(): Statement {
    return this.#statement('initialized', this.#context([CATEGORY.cmi5], {}));
  }

  terminated(seconds: number): Statement {
    return this.#statement('terminated', this.#context([CATEGORY.cmi5], {}), { result: { duration: isoDuration(seconds) } });
  }

  completed(seconds: number): Statement {
    const context = this.#context([CATEGORY.cmi5, CATEGORY.moveOn], {});
    return this.#statement('completed', context, { result: { completion: true, duration: isoDuration(seconds) } });
  }

  /** `passed` or `failed`, with the score; the platform's mark goes before the lesson's (cmi5 9.3.4). */
  judged(result: ScoreDetail, seconds: number): Statement {
    const { masteryScore } = this.#data;
    const success = this.passes(result);
    const { scaled } = result;
    const score = { scaled: Number(plainNumber(scaled)), raw: Number(plainNumber(scaled * 100, 2)), min: 0, max: 100 };
    const context = this.#context([CATEGORY.cmi5, CATEGORY.moveOn], masteryScore === null ? {} : { [MASTERY]: masteryScore });
    return this.#statement(success ? 'passed' : 'failed', context, { result: { success, score, duration: isoDuration(seconds) } });
  }

  /** One answer, beside the statements of cmi5 and without its category (cmi5 9.6.2.1). */
  answered(answer: ScoredAnswer): Statement {
    const isNumber = typeof answer.expected === 'number';
    const response = responseText(answer);
    const definition = {
      type: 'http://adlnet.gov/expapi/activities/cmi.interaction',
      interactionType: isNumber ? 'numeric' : 'fill-in',
      correctResponsesPattern: [rightPattern(answer)],
    };
    return this.#statement('answered', this.#context([], {}), {
      object: { objectType: 'Activity', id: `${this.#launch.activityId}/${answerName(answer)}`, definition },
      result: { success: answer.correct, ...(response === '' ? {} : { response }) },
    });
  }

  /** Whether a score passes by the platform's mark, or the lesson's where it has none. */
  passes({ scaled, passed }: ScoreDetail): boolean {
    const { masteryScore } = this.#data;
    return masteryScore === null ? passed : scaled >= masteryScore;
  }
}
