import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { createServer, get } from 'node:http';
import type { AddressInfo } from 'node:net';
import { after, before, describe, it } from 'node:test';
import { serve } from '../../demo/serve.js';
import { projectFolder } from '../install.js';

/** The status of a path as it is written: no client tidies the dots away. */
function statusOf(address: string, path: string): Promise<number | undefined> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    get({ hostname, port, path }, (response) => resolve(response.resume().statusCode)).on('error', reject);
  });
}

describe('the server of the demo', () => {
  let served: Awaited<ReturnType<typeof serve>>;
  before(async () => (served = await serve()));
  after(() => served.server.close());

  const paths: readonly [path: string, status: number][] = [
    ['/', 302],
    ['/demo/chart-room/', 200],
    ['/package.json', 200],
    ['/nowhere', 404],
    ['/%', 404],
    ['/.git/config', 404],
    ['/node_modules/lit/package.json', 404],
    ['/..%2f..%2f..%2fetc/passwd', 404],
  ];
  for (const [path, status] of paths) {
    it(`${path}: ${status}`, async () => assert.equal(await statusOf(served.address, path), status));
  }

  it('takes the next free port when its own is taken', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const { port } = other.address() as AddressInfo;
    const { server, address } = await serve({ port });
    assert.ok(Number(new URL(address).port) > port);
    server.close();
    other.close();
  });

  it('says what is wrong with a PORT that is none', () => {
    const { status, stderr } = spawnSync(process.execPath, ['demo/start.js'], { cwd: projectFolder, encoding: 'utf8', env: { ...process.env, PORT: 'abc' } });
    assert.equal(status, 2);
    assert.match(stderr, /PORT is abc/);
  });
});
