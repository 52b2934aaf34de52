/* The widget of the page follows the attributes in the text box. */
(() => {
  const place = document.getElementById('example');
  const box = document.getElementById('attributes');
  const refusal = document.getElementById('refusal');
  const html = document.getElementById('copied-html');
  const result = document.getElementById('result-now');
  const told = document.getElementById('event-now');
  const said = document.getElementById('copy-said');
  const tag = place.dataset.tag;
  const inside = place.firstElementChild.innerHTML;

  /** What any element takes; everything else must be the widget's own. */
  const anywhere = ['lang', 'dir', 'data-lubber-theme', 'data-lubber-density'];
  const known = new Set([...anywhere, ...customElements.get(tag).observedAttributes]);

  const asText = (data) => JSON.stringify(data, (key, value) => (typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(8)) : value), 2);

  function showResult() {
    const { result: now } = place.firstElementChild;
    result.textContent = now ? asText(now) : 'null: there is none.';
  }

  function showHtml() {
    const lines = box.value.trim().split('\n').map((line) => `  ${line.trim()}`).join('\n');
    html.textContent = `<script src="lubberline.js" defer></script>\n<${tag}\n${lines}\n>${inside}</${tag}>`;
  }

  function follow() {
    try {
      const attributes = globalThis.readAttributes(box.value);
      const stranger = attributes.find(([name]) => !known.has(name));
      if (stranger) throw new Error(`The widget has no attribute ${stranger[0]}.`);
      const widget = document.createElement(tag);
      for (const [name, value] of attributes) widget.setAttribute(name, value);
      widget.append(...place.firstElementChild.childNodes);
      place.replaceChildren(widget);
      refusal.textContent = '';
      showHtml();
      widget.updateComplete.then(showResult);
    } catch (error) {
      refusal.textContent = error.message;
    }
  }

  async function copy() {
    try {
      await navigator.clipboard.writeText(html.textContent);
      said.textContent = 'Copied.';
    } catch {
      // A plain page of an intranet has no clipboard: the text is chosen instead.
      getSelection().selectAllChildren(html);
      said.textContent = 'Press Ctrl+C to copy what is marked.';
    }
  }

  let waiting = 0;
  box.addEventListener('input', () => {
    clearTimeout(waiting);
    waiting = setTimeout(follow, 300);
  });
  document.getElementById('copy').addEventListener('click', copy);
  for (const name of ['lubber-result', 'lubber-record-request', 'lubber-score']) {
    place.addEventListener(name, ({ type, detail }) => {
      told.textContent = `${type}\n${asText(detail)}`;
      showResult();
    });
  }
  // What is looked at is up to date, whatever changed it: a book opens late.
  result.parentElement.addEventListener('toggle', showResult);
  showHtml();
  showResult();
})();
