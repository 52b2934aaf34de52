/** For the analyzer: what of the sources makes custom-elements.json and the editors' data. */
import { customElementJetBrainsPlugin } from 'custom-element-jet-brains-integration';
import { customElementVsCodePlugin } from 'custom-element-vs-code-integration';

const outdir = process.env.LUBBERLINE_OUT ?? 'dist';

/** Members the views of a widget need, and Lit's own: of no use to a page. */
const inside = new Set(['styles', 'lubberlineRelease', 'page', 'width', 't', 'settle', 'unsettle', 'isSettled', 'say', 'change', 'isLocked']);

/** What a page may rely on: public, named, and said in words. */
function isPublic({ name, privacy, description }) {
  return !name.startsWith('#') && privacy === undefined && description !== undefined && !inside.has(name);
}

/** Only the classes of elements, with paths of the package. */
function publicOnly() {
  return {
    name: 'public-only',
    packageLinkPhase({ customElementsManifest }) {
      for (const module of customElementsManifest.modules) {
        module.path = module.path.replace(/\.ts$/, '.js');
        module.declarations = (module.declarations ?? []).filter(({ kind, customElement, name }) => kind === 'class' && (customElement || name === 'LubberElement'));
        for (const declaration of module.declarations) declaration.members = (declaration.members ?? []).filter(isPublic);
        const names = new Set(module.declarations.map(({ name }) => name));
        module.exports = (module.exports ?? []).filter(({ kind, name }) => kind === 'custom-element-definition' || names.has(name));
      }
      customElementsManifest.modules = customElementsManifest.modules.filter(({ exports }) => exports.length > 0);
    },
  };
}

export default {
  globs: ['components/**/*.ts'],
  exclude: ['components/languages/**'],
  outdir,
  litelement: true,
  packagejson: false,
  plugins: [publicOnly(), customElementVsCodePlugin({ outdir, hideLogs: true }), customElementJetBrainsPlugin({ outdir, packageJson: false, hideLogs: true })],
};
