/** What axe finds on a page that keeps somebody out. Its code goes into a page once, and is run there. */
import axe from "axe-core";
import type { Page } from "playwright-core";

export interface Barrier {
  readonly rule: string;
  readonly impact: string;
  /** The element, cut to what a message can hold. */
  readonly element: string;
}

export interface BarrierSearch {
  /** These rules alone. */
  readonly rules?: readonly string[];
  /** The rules of these standards alone; all of axe's own where neither is said. */
  readonly standards?: readonly string[];
  /** Selectors of elements that are not looked at. */
  readonly except?: readonly string[];
}

/** Everything that axe finds on the page as it is now. */
export async function findBarriers(
  page: Page,
  { rules, standards, except = [] }: BarrierSearch = {},
): Promise<readonly Barrier[]> {
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(axe.source);
  const wanted = rules ?? standards;
  const asked = {
    exclude: except.map((selector) => [selector]),
    ...(wanted && {
      runOnly: { type: rules ? ("rule" as const) : ("tag" as const), values: [...wanted] },
    }),
  };
  return page.evaluate(async ({ exclude, ...options }) => {
    const { axe: loaded } = globalThis as unknown as { axe: typeof axe };
    const { violations } = await loaded.run(
      { exclude },
      { resultTypes: ["violations"], preload: false, ...options },
    );
    return violations.flatMap(({ id, impact, nodes }) =>
      nodes.map(({ html }) => ({ rule: id, impact: String(impact), element: html.slice(0, 200) })),
    );
  }, asked);
}

/** The same in words: `rule: element`. */
export async function barriersOn(page: Page, search: BarrierSearch = {}): Promise<string[]> {
  return inWords(await findBarriers(page, search));
}

/** Those that are serious or worse, in words. */
export async function seriousBarriersOn(page: Page, search: BarrierSearch): Promise<string[]> {
  const found = await findBarriers(page, search);
  return inWords(found.filter(({ impact }) => impact === "serious" || impact === "critical"));
}

function inWords(barriers: readonly Barrier[]): string[] {
  return barriers.map(({ rule, element }) => `${rule}: ${element}`);
}
