/* Attributes as a reader types them: read without the parser of the browser, which a strict policy keeps from scripts. */
(() => {
  const named = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

  const plain = (words) =>
    words.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex, decimal, name) => {
      if (name) return named[name] ?? whole;
      const code = hex ? parseInt(hex, 16) : Number(decimal);
      return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
    });

  /** [name, value] each; throws with the text that is no attribute. */
  function readAttributes(words) {
    const attributes = [];
    let rest = words.trim();
    while (rest !== '') {
      const found = /^([a-z][a-z0-9-]*)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'<>=]+)))?(?=\s|$)/i.exec(rest);
      if (!found) throw new Error(`This is no attribute: ${rest.split('\n')[0]}`);
      attributes.push([found[1].toLowerCase(), plain(found[2] ?? found[3] ?? found[4] ?? '')]);
      rest = rest.slice(found[0].length).trim();
    }
    return attributes;
  }

  globalThis.readAttributes = readAttributes;
})();
