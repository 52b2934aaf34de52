/** A static server for the demo, under the strictest policy a company would set. */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
};

/** Nothing from elsewhere, nothing inline, no connection at all; `lit-html` is Lit's own policy name. */
export const strictPolicy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'none'; base-uri 'none'; form-action 'none'; " +
  "frame-src 'self'; require-trusted-types-for 'script'; trusted-types lit-html";

function fileOf(folder, url) {
  const path = normalize(decodeURIComponent(new URL(url, 'http://localhost').pathname));
  const file = join(folder, path);
  if (!file.startsWith(folder) || path.split(sep).some((part) => part.startsWith('.') || part === 'node_modules')) return null;
  if (!existsSync(file)) return null;
  if (!statSync(file).isDirectory()) return file;
  const index = join(file, 'index.html');
  return existsSync(index) ? index : null;
}

function answer(request, response, { folder, policy }) {
  let file = null;
  try {
    file = fileOf(folder, request.url ?? '/');
  } catch {
    // An address that cannot be decoded is not found.
  }
  if (request.url === '/' && folder === root) {
    response.writeHead(302, { location: '/demo/chart-room/' }).end();
  } else if (!file) {
    response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found');
  } else {
    response.writeHead(200, {
      'content-type': types[extname(file)] ?? 'application/octet-stream',
      ...(policy ? { 'content-security-policy': policy } : {}),
      'cache-control': 'no-store',
    });
    // A file that is built anew at this moment may be gone: that ends the answer, not the server.
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response);
  }
}

/** Serves the project folder, or another whose name ends with a slash, on this machine only; takes the next free port when one is taken. */
export function serve({ port = 0, folder = root, policy = strictPolicy } = {}) {
  return new Promise((resolve, reject) => {
    const server = createServer((request, response) => answer(request, response, { folder, policy }));
    server.on('error', (error) => {
      if (error.code === 'EADDRINUSE' && port !== 0 && port < 65535) resolve(serve({ port: port + 1, folder, policy }));
      else reject(error);
    });
    server.listen(port, '127.0.0.1', () => {
      resolve({ server, address: `http://127.0.0.1:${server.address().port}/` });
    });
  });
}
