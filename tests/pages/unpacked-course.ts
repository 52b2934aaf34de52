import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, extname, join, normalize } from 'node:path';
import { unzipSync } from 'fflate';
import { projectFolder } from '../install.js';

export type PackageKind = 'scorm-1.2' | 'scorm-2004' | 'cmi5';

/** The course packages, made and unpacked into a folder of their own. */
export interface UnpackedCourse {
  /** Where a package was unpacked. */
  readonly folder: (kind: PackageKind) => string;
  /** The names of its files. */
  readonly names: (kind: PackageKind) => readonly string[];
  readonly remove: () => void;
}

export function unpackCourse(): UnpackedCourse {
  const root = mkdtempSync(join(tmpdir(), 'lubberline-course-'));
  execFileSync(process.execPath, ['demo/course/package.js', root], { cwd: projectFolder });
  const names = new Map<PackageKind, readonly string[]>();
  for (const kind of ['scorm-1.2', 'scorm-2004', 'cmi5'] as const) {
    const files = unzipSync(readFileSync(join(root, `compass-course-${kind}.zip`)));
    for (const [name, bytes] of Object.entries(files)) {
      mkdirSync(dirname(join(root, kind, name)), { recursive: true });
      writeFileSync(join(root, kind, name), bytes);
    }
    names.set(kind, Object.keys(files));
  }
  return {
    folder: (kind) => join(root, kind),
    names: (kind) => names.get(kind) ?? [],
    remove: () => rmSync(root, { recursive: true, force: true }),
  };
}

const types: Readonly<Record<string, string>> = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css', '.svg': 'image/svg+xml' };

export interface Served {
  readonly server: Server;
  /** Ends with a slash. */
  readonly address: string;
}

export async function listen(server: Server): Promise<Served> {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { server, address: `http://127.0.0.1:${String((server.address() as AddressInfo).port)}/` };
}

/** A platform's web server: the unpacked course, its run-time, and pages of its own. */
export function serveCourse(folder: string, pages: Readonly<Record<string, string>> = {}): Promise<Served> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const own = pages[path];
    try {
      const runTime = /^\/run-time\/(scorm\w+\.js)$/.exec(path);
      const file = runTime ? join(projectFolder, 'node_modules/scorm-again/dist/esm', runTime[1] ?? '') : join(folder, normalize(path));
      const body = own ?? readFileSync(file);
      response.writeHead(200, { 'content-type': own === undefined ? (types[extname(file)] ?? 'text/plain') : 'text/html; charset=utf-8' }).end(body);
    } catch {
      response.writeHead(404).end('Not found');
    }
  });
  return listen(server);
}
