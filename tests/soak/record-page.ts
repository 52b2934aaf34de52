import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** A page with nothing but a record book, from the sources as they are, on a server of its own. */
export async function serveRecordPage(): Promise<{ address: string; close(): void }> {
  const folder = fileURLToPath(new URL('../..', import.meta.url));
  const { outputFiles } = await build({
    absWorkingDir: folder,
    entryPoints: ['components/record/define.ts'],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'chrome99',
    conditions: ['production'],
    tsconfig: 'tsconfig.json',
    logLevel: 'silent',
  });
  const script = outputFiles[0]?.text ?? '';
  const page = '<!doctype html><html lang="en"><meta charset="utf-8"><link rel="icon" href="data:,"><title>Record</title><script src="record.js" defer></script><body></body></html>';
  const server = createServer((request, response) => {
    const isScript = request.url?.endsWith('record.js') ?? false;
    response.writeHead(200, { 'content-type': isScript ? 'text/javascript; charset=utf-8' : 'text/html; charset=utf-8' });
    response.end(isScript ? script : page);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`, close: () => server.close() };
}
