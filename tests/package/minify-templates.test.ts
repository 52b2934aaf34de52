import assert from 'node:assert/strict';
import { test } from 'node:test';
import { minifyTemplates } from '../../components/build/minify-templates.js';

const cases: readonly (readonly [what: string, from: string, to: string])[] = [
  ['one space is left between words and between inline elements', 'html`<p>\n    one\n    <b>two</b>\n  </p>`', 'html`<p> one <b>two</b> </p>`'],
  ['what stands in places is not touched', 'html`<p>${a   +   b}  </p>`', 'html`<p>${a   +   b} </p>`'],
  ['a template within a template is made short too', 'html`<p>\n ${svg`<g>\n\n</g>`}</p>`', 'html`<p> ${svg`<g> </g>`}</p>`'],
  ['where white space is shown it stays', 'html`<pre>a\n  b</pre>`', 'html`<pre>a\n  b</pre>`'],
  ['comments and spaces go from styles', 'css`\n  .a, .b { color: red; /* why */ margin: 0 auto; }\n`', 'css`.a,.b{color:red;margin:0 auto}`'],
  ['spaces that mean a descendant stay', 'css`:host .a :focus { width: calc(1px + 2px); }`', 'css`:host .a :focus{width:calc(1px + 2px)}`'],
  ['numbers lose a nought before the point, and child selectors their spaces', 'css`a > b ~ c { margin: -0.5em 0.25em 10.5em; inset: calc(0.1em + 0.2em); }`', 'css`a>b~c{margin:-.5em .25em 10.5em;inset:calc(.1em + .2em)}`'],
  ['a media query keeps its words', 'css`@media (max-width: 40rem) and (print) { a { b: c; } }`', 'css`@media (max-width:40rem) and (print){a{b:c}}`'],
  ['what is written out by a style stays', "css`a::before { content: '▲  , '; }`", "css`a::before{content:'▲  , '}`"],
  ['a place in a style keeps what is around it', 'css`a { --b: ${c}; } @media print { a { ${d} } }`', 'css`a{--b:${c}}@media print{a{${d}}}`'],
  ['other templates and strings are left alone', 'const a = `x\n  y`; const b = "html`  `";', 'const a = `x\n  y`; const b = "html`  `";'],
];

for (const [what, from, to] of cases) test(what, () => assert.equal(minifyTemplates(from), to));
