/**
 * Makes a fresh checkout ready: packages, and for the tests a browser. Uses nothing but
 * Node itself, since it runs before anything is installed, and skips what is done already.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const projectFolder = fileURLToPath(new URL('..', import.meta.url));

function run(command, args) {
  const { status } = spawnSync(command, args, { cwd: projectFolder, stdio: ['ignore', 'inherit', 'inherit'] });
  if (status !== 0) {
    console.error(`${command} ${args.join(' ')} failed.`);
    process.exit(status ?? 1);
  }
}

/** Installs the packages of the lock file unless the last install was of the same one. */
export function ensurePackages() {
  const stamp = new URL('../node_modules/.lubberline-installed', import.meta.url);
  const lock = createHash('sha256').update(readFileSync(new URL('../package-lock.json', import.meta.url))).digest('hex');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return;
  console.log('Installing packages …');
  // Scripts stay off: no package here needs its own, and some would fetch a browser.
  run('npm', ['ci', '--include=dev', '--ignore-scripts', '--no-audit', '--no-fund']);
  writeFileSync(stamp, lock);
}

const chromiumPlaces = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const firefoxPlaces = ['/usr/bin/firefox-esr', '/usr/bin/firefox'];

function find(variable, places) {
  return [process.env[variable], ...places].find((place) => place && existsSync(place));
}

export const findChromium = () => find('CHROME_PATH', chromiumPlaces);
export const findFirefox = () => find('FIREFOX_PATH', firefoxPlaces);

/** Installs Chromium and Firefox with apt where they are missing and this is root. */
export function ensureBrowsers() {
  if (findChromium() && findFirefox()) return;
  const canInstall = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  if (canInstall) {
    console.log('Installing browsers for the tests …');
    run('apt-get', ['update', '-q']);
    run('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium', 'firefox-esr', 'fonts-dejavu-core']);
  }
  if (!findChromium()) {
    console.error(
      'The tests need Chromium: install it as root with "apt-get update && apt-get install -y chromium firefox-esr", or set CHROME_PATH.',
    );
    process.exit(2);
  }
}
