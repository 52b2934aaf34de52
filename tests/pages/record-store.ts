import { createServer } from 'node:http';
import type { IncomingMessage } from 'node:http';
import { listen } from './unpacked-course.js';
import type { Served } from './unpacked-course.js';

export type Bag = Readonly<Record<string, unknown>>;

/** One call as it came in. */
export interface Call {
  readonly method: string;
  readonly path: string;
  readonly query: URLSearchParams;
  readonly headers: IncomingMessage['headers'];
  readonly body: string;
}

export interface RecordStoreOptions {
  readonly launchData: Bag;
  /** How often statements are answered 503 before they are taken. */
  readonly busy?: number;
  /** A document that is not given away before `release`, as of a platform far away. */
  readonly held?: string;
}

export interface TestStore extends Served {
  readonly calls: readonly Call[];
  readonly statements: readonly Bag[];
  /** Gives away what was held. */
  release(): void;
}

const TOKEN = 'bHViYmVyOmxpbmU=';

async function bodyOf(request: IncomingMessage): Promise<string> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts).toString('utf8');
}

/** A platform's token address and record store, of an origin other than the lesson's, as small as cmi5 needs. */
export async function recordStore({ launchData, busy = 0, held }: RecordStoreOptions): Promise<TestStore> {
  const calls: Call[] = [];
  const statements: Bag[] = [];
  const states = new Map<string, string>([['LMS.LaunchData', JSON.stringify(launchData)]]);
  let isTaken = false;
  let refusals = busy;
  let release = (): void => undefined;
  const released = new Promise<void>((resolve) => (release = resolve));

  const answer = ({ method, path, query, headers, body }: Call): [status: number, text: string] => {
    if (path === '/fetch') {
      if (method !== 'POST') return [405, ''];
      const first = !isTaken;
      isTaken = true;
      return first ? [200, JSON.stringify({ 'auth-token': TOKEN })] : [200, JSON.stringify({ 'error-code': '1', 'error-text': 'in use' })];
    }
    if (headers.authorization !== `Basic ${TOKEN}`) return [401, ''];
    if (headers['x-experience-api-version'] !== '1.0.3') return [400, 'no version'];
    if (path === '/xapi/agents/profile') return [404, ''];
    if (path === '/xapi/activities/state') {
      const id = query.get('stateId') ?? '';
      if (method === 'PUT') states.set(id, body);
      return method === 'PUT' ? [204, ''] : states.has(id) ? [200, states.get(id) ?? ''] : [404, ''];
    }
    if (path !== '/xapi/statements' || method !== 'POST') return [404, ''];
    if (refusals > 0) {
      refusals -= 1;
      return [503, ''];
    }
    const read = JSON.parse(body) as Bag | Bag[];
    const batch = Array.isArray(read) ? read : [read];
    statements.push(...batch);
    return [200, JSON.stringify(batch.map(({ id }) => id))];
  };

  const served = await listen(
    createServer((request, response) => {
      const respond = async (body: string): Promise<void> => {
        const allowed = {
          'access-control-allow-origin': '*',
          'access-control-allow-headers': 'authorization, content-type, x-experience-api-version',
          'access-control-allow-methods': 'GET, POST, PUT',
        };
        if (request.method === 'OPTIONS') {
          response.writeHead(204, allowed).end();
          return;
        }
        const url = new URL(request.url ?? '/', 'http://localhost');
        const call = { method: request.method ?? '', path: url.pathname, query: url.searchParams, headers: request.headers, body };
        calls.push(call);
        if (held !== undefined && call.method === 'GET' && call.query.get('stateId') === held) await released;
        const [status, text] = answer(call);
        response.writeHead(status, { ...allowed, 'content-type': 'application/json' }).end(text);
      };
      // Whoever goes in the middle of a call, or is cut off after a test, waits for no answer.
      void bodyOf(request).then(respond, () => undefined);
    }),
  );
  return { ...served, calls, statements, release };
}
