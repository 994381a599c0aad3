/** A tile's photograph keeps the account company on a desk, and covers nothing that comes after it. */
import { expect } from "vitest";
import { siteTest } from "../support/browser.ts";
import { demoSite } from "./built-sites.ts";

const site = demoSite();

siteTest(
  "the photograph stays in view beside the account, and ends with it",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(`${root}tiles/ev-107.html`, { viewport: { width: 1280, height: 850 } });
    const placesAt = (selector: string) =>
      page.evaluate((asked) => {
        document.querySelector(asked)?.scrollIntoView();
        const edge = (of: string, side: "top" | "bottom") =>
          document.querySelector(of)?.getBoundingClientRect()[side] ?? Number.NaN;
        return {
          photograph: [edge(".plates .plate", "top"), edge(".plates .plate", "bottom")],
          after: edge(".one-change", "top"),
        };
      }, selector);
    const beside = await placesAt(".outcome");
    expect(beside.photograph[0]).toBe(0);
    const past = await placesAt("#one-change");
    expect(past.after).toBeLessThan(100);
    expect(past.photograph[1]).toBeLessThanOrEqual(past.after);
  },
);
