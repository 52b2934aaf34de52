import { prose } from './html-text.js';
import { pageFrame } from './page-frame.js';

/** The list of all widgets. */
export function indexPage(declarations) {
  const rows = declarations.map(({ tagName, description }) => `<dt><a href="${tagName}.html"><code>${tagName}</code></a></dt>\n<dd>${prose(description)}</dd>`);
  return pageFrame({
    title: 'Reference',
    what: 'Every widget: an example to change, and all it takes, tells and lets be restyled.',
    main: `<section class="prose">\n<dl class="names">\n${rows.join('\n')}\n</dl>\n</section>`,
  });
}
