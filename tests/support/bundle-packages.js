import { build } from 'esbuild';

/** Packages that ship no ES module; a browser cannot import them as they are. */
const commonPackages = ['axe-core', 'topojson-client'];

/** A plugin of the test runner's server that hands those out as modules. */
export function bundlePackages() {
  const made = new Map();
  const prefix = '/__bundled__/';
  return {
    name: 'bundle-packages',
    resolveImport({ source }) {
      return commonPackages.includes(source) ? `${prefix}${source}.js` : undefined;
    },
    async serve({ path }) {
      if (!path.startsWith(prefix)) return undefined;
      const name = path.slice(prefix.length, -3);
      if (!made.has(name)) {
        const { outputFiles } = await build({
          stdin: { contents: `import it from '${name}'; export default it;`, resolveDir: process.cwd() },
          bundle: true,
          format: 'esm',
          write: false,
        });
        made.set(name, outputFiles[0].text);
      }
      return { body: made.get(name), type: 'js' };
    },
  };
}
