/** The wall as a test reads it. */
import type { Page } from "playwright-core";

/** The codes on the wall in their order, after its button has put all that was found. */
export async function codesOnTheWall(page: Page): Promise<string[]> {
  const more = page.locator(".more button");
  while (await more.isVisible()) await more.click();
  return page.locator("#wall .code").allTextContents();
}

/** What is said of how many tiles were found. */
export function found(page: Page): Promise<string | null> {
  return page.locator("#found p").first().textContent();
}
