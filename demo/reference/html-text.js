/** Text and attributes as they stand in HTML. */
const letters = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', '\n': '&#10;', '\t': '&#9;' };

export const text = (words) => String(words).replace(/[&<>]/g, (letter) => letters[letter]);

/** A short value is read whole: broken at a hyphen, a part of it would be taken for another value. A longer one may have to break where it can. */
const SHORT = 24;
export const code = (words) => `<code${words.length > SHORT ? '' : ' class="short"'}>${text(words)}</code>`;

/** Words in back quotes are code; in the others an apostrophe is set as one. */
export const prose = (words = '') =>
  words
    .replace(/\s+/g, ' ')
    .split(/`([^`]+)`/)
    .map((part, place) => (place % 2 === 1 ? code(part) : text(part).replace(/(?<=\p{L})'/gu, '’')))
    .join('');

/** An attribute in the quotes it needs the fewest escapes in. */
function attribute([name, value]) {
  if (value.includes('"') && !value.includes("'")) return `${name}='${value.replace(/[&<>\n\t]/g, (letter) => letters[letter])}'`;
  return `${name}="${value.replace(/[&<>"\n\t]/g, (letter) => letters[letter])}"`;
}

/** The attributes a line each, as the reader edits them. */
export const attributeLines = (attributes) => attributes.map(attribute).join('\n');

/** A whole tag on one line. */
export const tag = (name, attributes, inside = '') => `<${name}${attributes.map((each) => ` ${attribute(each)}`).join('')}>${inside}</${name}>`;
