import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { summaryReporter } from '@web/test-runner';
import { chromeLauncher } from '@web/test-runner-chrome';
import { puppeteerLauncher } from '@web/test-runner-puppeteer';
import { askedBrowsers, findChromium, findFirefox } from './install.js';
import { bundlePackages } from './support/bundle-packages.js';
import { slowestLine } from './support/slowest.js';
import { testPage } from './support/test-page.js';

const quiet = [
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Prints what the runner never does by itself: one line with the two counts. */
function countReporter() {
  return {
    onTestRunFinished({ sessions }) {
      let passed = 0;
      let failed = 0;
      let time = 0;
      let held = 0;
      const times = new Map();
      const walk = (suite) => {
        for (const test of suite?.tests ?? []) {
          held += 1;
          time += test.duration ?? 0;
          if (test.passed) passed += 1;
          else if (!test.skipped) failed += 1;
        }
        for (const inner of suite?.suites ?? []) walk(inner);
      };
      for (const session of sessions) {
        time = 0;
        held = 0;
        walk(session.testResults);
        const file = `${relative('', session.testFile ?? '')} in ${session.browser.name}`;
        times.set(file, time);
        // A page that broke before its first test, or holds none, counts as one failure.
        if (held === 0) failed += 1;
        if (held === 0 && session.passed) console.log(`${file} holds no test.`);
      }
      const slowest = slowestLine(times);
      if (slowest) console.log(slowest);
      console.log(`in browsers: ${passed} passed, ${failed} failed`);
    },
  };
}

const launchers = {
  chromium: () => chromeLauncher({ launchOptions: { executablePath: findChromium(), args: quiet, timeout: 180_000 } }),
  firefox: () => puppeteerLauncher({ launchOptions: { browser: 'firefox', executablePath: findFirefox(), headless: true, timeout: 180_000 } }),
};

/** A browser that is not there is left out: the run as a whole counts that as a failure. */
const browsers = askedBrowsers().filter((name) => (name === 'chromium' ? findChromium() : findFirefox()));

export default {
  rootDir: fileURLToPath(new URL('..', import.meta.url)),
  files: ['tests/components/**/*.test.ts'],
  nodeResolve: { exportConditions: ['production', 'default'] },
  // One page at a time: a page in the background gets no animation frame, and what waits for one hangs.
  concurrency: 1,
  // What hangs comes to its end; a slow or busy machine is given its time.
  browserStartTimeout: 180_000,
  testsStartTimeout: 180_000,
  testsFinishTimeout: 900_000,
  testRunnerHtml: testPage,
  testFramework: { config: { timeout: 180_000 } },
  reporters: [summaryReporter(), countReporter()],
  browsers: browsers.map((name) => launchers[name]()),
  plugins: [
    bundlePackages(),
    esbuildPlugin({ ts: true, target: 'es2022', tsconfig: fileURLToPath(new URL('../tsconfig.json', import.meta.url)) }),
  ],
};
