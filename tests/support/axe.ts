import axe from 'axe-core';

/** Fails with the rules and places that axe finds wrong, by WCAG 2.2 A and AA. */
export async function assertAccessible(element: Element): Promise<void> {
  const { violations } = await axe.run(element, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] });
  const found = violations.map(({ id, nodes }) => `${id}, ${nodes.length} times, first: ${nodes[0]?.html ?? ''} ${nodes[0]?.failureSummary ?? ''}`);
  if (found.length > 0) throw new Error(found.join('\n'));
}
