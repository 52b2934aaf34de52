/**
 * Makes a fresh checkout ready: packages, and for the tests a browser. Uses nothing but
 * Node itself, since it runs before anything is installed, and skips what is done already.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectFolder = fileURLToPath(new URL('..', import.meta.url));

/** Runs a command in the open; whether it succeeded. */
function run(command, args) {
  const { status } = spawnSync(command, args, { cwd: projectFolder, stdio: ['ignore', 'inherit', 'inherit'] });
  if (status !== 0) console.error(`${command} ${args.join(' ')} failed.`);
  return status === 0;
}

function packagesOf(lockFile) {
  return existsSync(lockFile) ? JSON.parse(readFileSync(lockFile, 'utf8')).packages : {};
}

/**
 * Whether every package of the lock file is there in its version, by npm's own list of what
 * it installed; those of other platforms may be missing. Whoever installed them, they stay:
 * `npm ci` begins by deleting all of them, and without a network that cannot be mended.
 */
export function packagesAreInstalled(folder = projectFolder) {
  const installed = packagesOf(join(folder, 'node_modules', '.package-lock.json'));
  return Object.entries(packagesOf(join(folder, 'package-lock.json'))).every(([path, { version, optional }]) => {
    if (path === '' || (optional && !installed[path])) return true;
    return installed[path]?.version === version && existsSync(join(folder, path));
  });
}

/** Installs the packages of the lock file unless they are there. */
export function ensurePackages() {
  if (packagesAreInstalled()) return;
  console.log('Installing packages …');
  // Scripts stay off: no package here needs its own, and some would fetch a browser.
  if (!run('npm', ['ci', '--include=dev', '--ignore-scripts', '--no-audit', '--no-fund'])) process.exit(1);
}

const chromiumPlaces = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const firefoxPlaces = ['/usr/bin/firefox-esr', '/usr/bin/firefox'];

function find(variable, places) {
  return [process.env[variable], ...places].find((place) => place && existsSync(place));
}

export const findChromium = () => find('CHROME_PATH', chromiumPlaces);
export const findFirefox = () => find('FIREFOX_PATH', firefoxPlaces);

/** The browsers the tests run in: both, or those named in `LUBBERLINE_BROWSERS`, such as `chromium`. */
export function askedBrowsers() {
  const named = (process.env.LUBBERLINE_BROWSERS ?? 'all').split(/[ ,]+/).filter(Boolean);
  const unknown = named.filter((name) => !['all', 'chromium', 'firefox'].includes(name));
  if (unknown.length > 0) throw new Error(`LUBBERLINE_BROWSERS names ${unknown.join(', ')}: there are all, chromium and firefox.`);
  return ['chromium', 'firefox'].filter((name) => named.includes(name) || named.includes('all'));
}

const found = (browser) => (browser === 'chromium' ? findChromium() : findFirefox());

/**
 * Installs the browsers asked for, with apt, where one is missing and this is root.
 * Returns what is missing still, in words: the tests in it cannot run.
 */
export function ensureBrowsers() {
  const isMissing = (browser) => !found(browser);
  const missing = askedBrowsers().filter(isMissing);
  if (missing.length > 0 && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    const packages = missing.map((browser) => (browser === 'firefox' ? 'firefox-esr' : browser));
    console.log(`Installing ${packages.join(' and ')} for the tests …`);
    // An index that cannot be renewed may still serve.
    run('apt-get', ['update', '-q']);
    run('apt-get', ['install', '-y', '-q', '--no-install-recommends', ...packages, 'fonts-dejavu-core']);
  }
  const lacks = {
    chromium: 'There is no Chromium: install it as root with "apt-get update && apt-get install -y chromium", or set CHROME_PATH.',
    firefox: 'There is no Firefox: install it as root with "apt-get update && apt-get install -y firefox-esr", or set FIREFOX_PATH.',
  };
  return missing.filter(isMissing).map((browser) => lacks[browser]);
}
