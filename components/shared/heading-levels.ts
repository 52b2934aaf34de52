/**
 * Tells assistive technology how deep in the page a widget's headings stand: its own are
 * written as of the second level, which fits a page with one title.
 */
export function setHeadingLevels(root: ParentNode, first: unknown): void {
  const level = Math.round(Number(first));
  const deeper = level >= 1 && level <= 6 ? level - 2 : 0;
  for (const heading of root.querySelectorAll('h2, h3, h4')) heading.setAttribute('aria-level', String(Number(heading.localName[1]) + deeper));
}
