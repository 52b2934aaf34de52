/** Runs axe on whatever stands on a stage, or elsewhere in a page. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'puppeteer-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Levels A and AA of WCAG 2.0 to 2.2; `wcag22aa` is what turns the size of targets on. */
const wcagTags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** The rules that another light can break: colours alone change with it. */
export const colourRules = ['color-contrast', 'link-in-text-block'];

interface Axe {
  run(where: string, options: object): Promise<{ violations: { id: string; nodes: { html: string; target: unknown; failureSummary?: string }[] }[] }>;
}

/** What axe finds wrong, in words; empty where there is nothing. */
export async function axeFindings(page: Page, rules: readonly string[] | 'all' = 'all', place = '#stage'): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(source);
  const only = rules === 'all' ? { type: 'tag', values: wcagTags } : { type: 'rule', values: [...rules] };
  return page.evaluate(async (runOnly, where) => {
    const { axe } = globalThis as unknown as { axe: Axe };
    const { violations } = await axe.run(where, { runOnly, resultTypes: ['violations'] });
    return violations.map(({ id, nodes }) => `${id}, ${nodes.length} times, first ${JSON.stringify(nodes[0]?.target)}: ${nodes[0]?.html.slice(0, 200)} ${nodes[0]?.failureSummary ?? ''}`);
  }, only, place);
}
