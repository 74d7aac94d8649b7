import axe from 'axe-core';
import type { Page } from 'playwright-core';

interface Finding {
  id: string;
  impact?: string | null;
  nodes: { target: unknown; failureSummary?: string }[];
}

/**
 * Serious and critical findings of axe-core by WCAG 2.2 AA, a line each. The page must be open
 * with `bypassCSP`.
 */
export async function accessProblems(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const findings = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: (root: Document, options: object) => Promise<{ violations: Finding[] }> };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
    return (await axe.run(document, { runOnly: { type: 'tag', values: tags } })).violations;
  });
  return findings
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${JSON.stringify(node.target)} ${node.failureSummary ?? ''}`),
    );
}

/** Every finding of axe-core in the bench on screen, however light, a line each. */
export async function benchFaults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: {
        run(node: Element): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
      };
    };
    const { violations } = await axe.run(document.querySelector('[data-bench-shown]')!);
    return violations.map(
      (v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 160)).join(' | ')}`,
    );
  });
}
