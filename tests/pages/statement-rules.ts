import assert from 'node:assert/strict';
import type { Bag } from './record-store.js';

const bag = (value: unknown): Bag => {
  assert.ok(typeof value === 'object' && value !== null && !Array.isArray(value), 'an object');
  return value as Bag;
};

const isIri = (value: unknown): boolean => typeof value === 'string' && /^[a-z][a-z0-9+.-]*:\S+$/i.test(value);
const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const duration = /^P(T(\d+H)?(\d+M)?(\d+(\.\d+)?S)?|\d+D)$/;

/** The rules of xAPI 1.0.3, part two (data), for what our statements hold; sections from memory. */
function assertStatement(statement: Bag): void {
  const { id, actor, verb, object, context, timestamp, result } = statement;
  // 2.4: no property beside those of a statement, none null.
  for (const [name, value] of Object.entries(statement)) {
    assert.ok(['id', 'actor', 'verb', 'object', 'result', 'context', 'timestamp', 'stored', 'authority', 'version', 'attachments'].includes(name), name);
    assert.notEqual(value, null);
  }
  // 2.4.1: the id is a UUID.
  assert.match(String(id), uuid);
  // 2.4.2: an agent is known by exactly one identifier.
  assert.equal(['mbox', 'mbox_sha1sum', 'openid', 'account'].filter((name) => name in bag(actor)).length, 1);
  // 2.4.3: a verb has an IRI, its display is a language map.
  assert.ok(isIri(bag(verb)['id']));
  for (const language of Object.keys(bag(bag(verb)['display']))) assert.match(language, /^[a-z]{2,3}(-[A-Za-z0-9]+)*$/);
  // 2.4.4.1: an activity has an IRI; an interaction has a type of the list and its patterns as strings.
  const { id: activity, definition } = bag(object);
  assert.ok(isIri(activity));
  if (definition !== undefined) {
    const { interactionType, correctResponsesPattern, type } = bag(definition);
    assert.ok(isIri(type));
    assert.ok(['true-false', 'choice', 'fill-in', 'long-fill-in', 'matching', 'performance', 'sequencing', 'likert', 'numeric', 'other'].includes(String(interactionType)));
    assert.ok(Array.isArray(correctResponsesPattern) && correctResponsesPattern.every((pattern) => typeof pattern === 'string'));
  }
  // 2.4.5: scores within their limits, success and completion are truth values, durations of ISO 8601, responses strings.
  if (result !== undefined) {
    const { score, success, completion, duration: time, response } = bag(result);
    if (score !== undefined) {
      const { scaled, raw, min, max } = bag(score) as Record<string, number>;
      assert.ok(scaled !== undefined && scaled >= -1 && scaled <= 1);
      assert.ok(raw !== undefined && min !== undefined && max !== undefined && min < max && raw >= min && raw <= max);
    }
    for (const truth of [success, completion]) if (truth !== undefined) assert.equal(typeof truth, 'boolean');
    if (time !== undefined) assert.match(String(time), duration);
    if (response !== undefined) assert.equal(typeof response, 'string');
  }
  // 2.4.6: the registration is a UUID; 2.4.6.2: context activities are lists; 4.1: extensions have IRIs for keys.
  const { registration, contextActivities, extensions } = bag(context);
  assert.match(String(registration), uuid);
  if (contextActivities !== undefined) {
    for (const [name, list] of Object.entries(bag(contextActivities))) {
      assert.ok(['parent', 'grouping', 'category', 'other'].includes(name));
      assert.ok(Array.isArray(list) && list.every((each) => isIri(bag(each)['id'])));
    }
  }
  if (extensions !== undefined) for (const key of Object.keys(bag(extensions))) assert.ok(isIri(key));
  // 2.4.7, 4.5: an instant of ISO 8601 with a zone.
  assert.match(String(timestamp), /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)$/);
}

export const verbOf = (statement: Bag): string => String(bag(statement['verb'])['id']).replace(/^.*\//, '');

function categoriesOf(statement: Bag): readonly string[] {
  const { category = [] } = bag(bag(statement['context'])['contextActivities'] ?? {});
  return (category as Bag[]).map(({ id }) => String(id).replace(/^.*\//, ''));
}

const inCmi5 = ['initialized', 'completed', 'passed', 'failed', 'terminated'];

/** The rules of cmi5 (Quartz) for all statements of one session; `launch` is what the platform gave. */
export function assertSession(statements: readonly Bag[], launch: { actor: Bag; registration: string; activityId: string; launchData: Bag }): void {
  const verbs = statements.map(verbOf);
  // 7.1.1: initialized first, terminated last, each once.
  assert.equal(verbs[0], 'initialized');
  assert.equal(verbs.at(-1), 'terminated');
  // 9.3: none of cmi5's twice; passed and failed not both.
  for (const verb of inCmi5) assert.ok(verbs.filter((each) => each === verb).length <= 1, `${verb} once at most`);
  assert.ok(!(verbs.includes('passed') && verbs.includes('failed')));
  assert.equal(new Set(statements.map(({ id }) => id)).size, statements.length);
  const template = bag(launch.launchData['contextTemplate']);
  for (const statement of statements) {
    assertStatement(statement);
    const verb = verbOf(statement);
    const context = bag(statement['context']);
    const result = statement['result'] === undefined ? {} : bag(statement['result']);
    // 9.2: the actor as launched. 9.6.1: the registration. 10.2.1: the template in every statement.
    assert.deepEqual(statement['actor'], launch.actor);
    assert.equal(context['registration'], launch.registration);
    for (const [key, value] of Object.entries(bag(template['extensions']))) assert.deepEqual(bag(context['extensions'])[key], value);
    const grouping = bag(template['contextActivities'])['grouping'];
    assert.deepEqual(bag(context['contextActivities'])['grouping'], grouping);
    const isOurs = !inCmi5.includes(verb);
    // 9.4: the activity as launched, for the verbs of cmi5.
    if (!isOurs) assert.equal(bag(statement['object'])['id'], launch.activityId);
    // 9.6.2.1: the category of cmi5 in those and in no other; 9.6.2.2: moveon where success or completion is told.
    assert.equal(categoriesOf(statement).includes('cmi5'), !isOurs);
    assert.equal(categoriesOf(statement).includes('moveon'), ['completed', 'passed', 'failed'].includes(verb));
    // 9.5.1: a score in passed and failed only; 9.5.2, 9.5.3: success and completion likewise where they belong.
    if (!isOurs) {
      assert.equal('score' in result, verb === 'passed' || verb === 'failed');
      assert.equal(result['success'], verb === 'passed' ? true : verb === 'failed' ? false : undefined);
      assert.equal(result['completion'], verb === 'completed' ? true : undefined);
      // 9.5.4.1: a duration in all but initialized.
      assert.equal('duration' in result, verb !== 'initialized');
    }
    // 9.3.4, 9.3.5, 9.6.3.2: the mastery score in the judgement, and the judgement by it.
    const { masteryScore } = launch.launchData;
    if ((verb === 'passed' || verb === 'failed') && typeof masteryScore === 'number') {
      const { scaled } = bag(result['score']) as Record<string, number>;
      assert.equal((scaled ?? NaN) >= masteryScore, verb === 'passed');
      assert.equal(bag(context['extensions'])['https://w3id.org/xapi/cmi5/context/extensions/masteryscore'], masteryScore);
    }
  }
}
