/** For the analyzer: what of the sources makes custom-elements.json and the editors' data. */
import { customElementJetBrainsPlugin } from 'custom-element-jet-brains-integration';
import { customElementVsCodePlugin } from 'custom-element-vs-code-integration';
import { publicManifest } from './public-manifest.js';

const outdir = process.env.LUBBERLINE_OUT ?? 'dist';

export default {
  globs: ['components/**/*.ts', 'core/**/*.ts'],
  exclude: ['components/languages/**'],
  outdir,
  litelement: true,
  packagejson: false,
  plugins: [publicManifest(), customElementVsCodePlugin({ outdir, hideLogs: true }), customElementJetBrainsPlugin({ outdir, packageJson: false, hideLogs: true })],
};
