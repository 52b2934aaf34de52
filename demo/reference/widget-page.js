/** The reference page of one widget. */
import { attributeLines, code, prose, tag, text } from './html-text.js';
import { declarationsOf, spelledOut } from './declarations.js';
import { examples, inside } from './examples.js';
import { pageFrame } from './page-frame.js';

/** What every widget has: told apart from its own. */
const shared = ['LubberElement', 'FormElement'];
/** Inherited by its name alone is what a widget says something else of. */
const isOwn = ({ name, inheritedFrom, description }, all) => !all.some((one) => one.name === inheritedFrom?.name && shared.includes(one.name) && one.attributes?.some((each) => each.name === name && each.description === description));

const list = (rows) => `<dl class="names">\n${rows.map(([name, words]) => `<dt>${name}</dt>\n<dd>${words}</dd>`).join('\n')}\n</dl>`;
const part = (title, body) => (body ? `<section class="prose">\n<h2>${title}</h2>\n${body}\n</section>` : '');

const fact = (name, value) => (value === undefined || value === '' || value === "''" ? '' : ` ${name} ${code(value)}.`);

/** What may be left out says so by its default. */
const plainType = (member) => (member?.type?.text ?? 'string').replace(/ \| undefined$/, '');

function attributeRow({ name, fieldName, default: usual, description }, members, declarations) {
  const property = members.find((member) => member.name === fieldName);
  return [code(name), `${prose(description)} <span class="aside">Property ${code(`${fieldName}: ${spelledOut(plainType(property), declarations)}`)}.${fact('Unless given,', usual)}</span>`];
}

const attributeList = (attributes, members, declarations) => (attributes.length > 0 ? list(attributes.map((each) => attributeRow(each, members, declarations))) : '');

function memberRow({ kind, name, type, parameters = [], return: returned, readonly, description }) {
  const shape =
    kind === 'method'
      ? `${name}(${parameters.map((each) => `${each.name}: ${each.type?.text ?? 'unknown'}`).join(', ')})${returned ? `: ${returned.type.text}` : ''}`
      : `${name}: ${plainType({ type })}`;
  return [code(shape), `${prose(description)}${readonly ? ' <span class="aside">Read only.</span>' : ''}`];
}

function exampleOf(name) {
  if (!examples[name]) throw new Error(`demo/reference/examples.js has no example of ${name}.`);
  return examples[name];
}

/** Widgets inside stand a line each, as one would write them. */
function exampleTag(name) {
  const within = (inside[name] ?? []).map(([each, attributes]) => `\n  ${tag(each, attributes)}`).join('');
  return tag(name, exampleOf(name), within && `${within}\n`);
}

function liveExample(name) {
  const known = 'Attributes of this page’s example, a line each';
  return `<div id="example" data-tag="${name}">
${exampleTag(name)}
</div>
<section class="prose">
<h2>Try it</h2>
<p id="try-help">Change an attribute below: the widget above follows, and so does the HTML to copy.</p>
<div class="kept">
<label for="attributes">${known}</label>
<textarea id="attributes" rows="${Math.min(12, exampleOf(name).length + 1)}" spellcheck="false" autocomplete="off" aria-describedby="try-help refusal">${text(attributeLines(exampleOf(name)))}</textarea>
</div>
<p id="refusal" role="status"></p>
<h3>HTML to copy</h3>
<pre id="copied-html"></pre>
<p><button type="button" id="copy">Copy</button> <span id="copy-said" role="status"></span></p>
<details>
<summary>What <code>result</code> says now</summary>
<pre id="result-now"></pre>
</details>
<details>
<summary>What the last event told</summary>
<pre id="event-now">None yet: an event tells what the reader did. Change a field of the widget.</pre>
</details>
</section>`;
}

function resultShape(members, declarations) {
  const result = members.find(({ name }) => name === 'result');
  if (!result) return '';
  const [outer, ...named] = declarationsOf(result.type.text, declarations);
  return `<p>${code(`result: ${result.type.text}`)} ${prose(result.description)}</p>
${outer ? `<pre>${text(outer[1])}</pre>` : ''}
${named.map(([name, declared]) => `<details>\n<summary>${code(name)}</summary>\n<pre>${text(declared)}</pre>\n</details>`).join('\n')}
<p class="aside">Degrees, east, north and clockwise positive, unless a comment says otherwise; a doubt is one standard deviation.</p>`;
}

/** @param declaration of the manifest, @param declarations by name, @param all declarations of the manifest. */
export function widgetPage(declaration, declarations, all) {
  const { tagName, description, attributes = [], members = [], events = [], slots = [], cssParts = [], cssProperties = [] } = declaration;
  const alone = members.filter(({ attribute: name, name: own }) => !name && own !== 'result');
  const named = (rows) => (rows.length > 0 ? list(rows.map(({ name, description: words, type }) => [`${code(name)}${type ? ` ${code(type.text)}` : ''}`, prose(words)])) : '');
  const main = [
    liveExample(tagName),
    part('Attributes of its own', attributeList(attributes.filter((each) => isOwn(each, all)), members, declarations)),
    part('Attributes all widgets have', attributeList(attributes.filter((each) => !isOwn(each, all)), members, declarations)),
    part('Result', resultShape(members, declarations)),
    part('Events', named(events)),
    part('Properties and methods without an attribute', alone.length > 0 ? list(alone.map(memberRow)) : ''),
    part('Slots', list(slots.map(({ name, description: words }) => [code(name || 'default'), prose(words)]).concat(slots.length > 0 ? [] : [['none', 'What stands inside the tag is not shown.']]))),
    part('Parts to restyle', named(cssParts)),
    part(
      'Custom properties',
      cssProperties.length > 0 ? list(cssProperties.map(({ name, description: words, default: usual }) => [code(name), `${prose(words)}. <span class="aside">${fact('Unless given,', usual)}</span>`])) : '',
    ),
    `<section class="prose"><p><a href="index.html">All widgets</a></p></section>`,
  ].filter(Boolean);
  return pageFrame({ title: `<${tagName}>`, what: prose(description), main: main.join('\n'), scripts: ['../../dist/lubberline.js', 'tag-text.js', 'live-example.js'] });
}
