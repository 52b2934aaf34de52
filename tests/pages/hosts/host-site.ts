import { copyFileSync, cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { projectFolder } from '../../install.js';

/** A host page as its owner would put it together: its own files, and ours copied beside them. */
export interface HostSite {
  /** Ends with a slash. */
  readonly folder: string;
  /** Installs the package, and others, for a page that bundles its own. */
  install(...others: string[]): void;
  write(name: string, text: string): void;
  remove(): void;
}

export function siteOf(host: string, scripts: readonly string[] = ['lubberline.js']): HostSite {
  const folder = `${mkdtempSync(join(tmpdir(), `lubberline-${host}-`))}/`;
  const hosts = join(projectFolder, 'tests', 'pages', 'hosts');
  cpSync(join(hosts, host), folder, { recursive: true });
  for (const shared of ['hear.js', 'app.css']) copyFileSync(join(hosts, shared), join(folder, shared));
  // The mark a browser asks every site for.
  writeFileSync(join(folder, 'favicon.ico'), '');
  for (const script of scripts) copyFileSync(join(projectFolder, 'dist', script), join(folder, script));
  return {
    folder,
    install: (...others) => {
      const link = (from: string, name: string): void => {
        const to = join(folder, 'node_modules', name);
        mkdirSync(dirname(to), { recursive: true });
        symlinkSync(from, to);
      };
      link(projectFolder, 'lubberline');
      for (const name of others) link(join(projectFolder, 'node_modules', name), name);
    },
    write: (name, text) => writeFileSync(join(folder, name), text),
    remove: () => rmSync(folder, { recursive: true }),
  };
}
