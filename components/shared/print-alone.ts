/** Set while a widget is printed by itself, on all that stays off the paper. */
const MARK = 'data-lubber-off-paper';

let rule: CSSStyleSheet | undefined;

function adopt(root: DocumentOrShadowRoot): void {
  if (!rule) {
    rule = new CSSStyleSheet();
    rule.replaceSync(`@media print { [${MARK}] { display: none !important; } }`);
  }
  if (!root.adoptedStyleSheets.includes(rule)) root.adoptedStyleSheets = [...root.adoptedStyleSheets, rule];
}

/** What stands beside an element, and beside all it stands in, up to the body of the page. */
function surroundings(element: Element): Element[] {
  const beside: Element[] = [];
  for (let inner = element; inner !== document.body; ) {
    const parent: Node | null = inner.parentNode;
    if (parent instanceof ShadowRoot) {
      adopt(parent);
      inner = parent.host;
    } else if (parent instanceof Element) {
      beside.push(...[...parent.children].filter((each) => each !== inner));
      inner = parent;
    } else {
      break;
    }
  }
  return beside;
}

let restore = (): void => undefined;

/** Prints one widget by itself: whoever presses its button wants its page, not all that stands around it. */
export function printAlone(widget: Element): void {
  restore();
  adopt(document);
  const marked = surroundings(widget);
  for (const each of marked) each.setAttribute(MARK, '');
  restore = () => {
    for (const each of marked) each.removeAttribute(MARK);
    removeEventListener('afterprint', restore);
  };
  // Not every browser waits in print() until the paper is out.
  addEventListener('afterprint', restore);
  print();
}
