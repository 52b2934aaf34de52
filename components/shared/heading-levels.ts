/**
 * Tells assistive technology how deep in the page a widget's headings stand: its own are
 * written as of the second level, which fits a page with one title.
 */
export function setHeadingLevels(root: ParentNode, first: number): void {
  for (const heading of root.querySelectorAll('h2, h3, h4')) {
    const level = Math.min(6, first + Number(heading.localName.slice(1)) - 2);
    if (first === 2) heading.removeAttribute('aria-level');
    else heading.setAttribute('aria-level', String(level));
  }
}

/** A level of an attribute; 2 for what is none. */
export function headingLevel(text: unknown): number {
  const level = Math.round(Number(text));
  return level >= 1 && level <= 6 ? level : 2;
}
