import axe from 'axe-core';

/** Fails with the rules and places that axe finds wrong, by WCAG 2.2 A and AA. */
export async function assertAccessible(element: Element): Promise<void> {
  // What scrolls becomes a stop of the keyboard in the frame after it is drawn.
  for (let frame = 0; frame < 3; frame += 1) await new Promise((resolve) => requestAnimationFrame(resolve));
  const { violations } = await axe.run(element, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] });
  const found = violations.map(({ id, nodes }) => `${id}, ${nodes.length} times, first: ${nodes[0]?.html ?? ''} ${nodes[0]?.failureSummary ?? ''}`);
  if (found.length > 0) throw new Error(found.join('\n'));
}
