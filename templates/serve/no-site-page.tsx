/** What `serve` shows while there is no site yet: that it is being built, or why it could not be. */
import type { VNode } from "preact";
import type { Trouble } from "./trouble.ts";
import { TroubleList, troubleHeading } from "./trouble-list.tsx";

export interface NoSitePageProps {
  /** Null while the site is being built. */
  readonly trouble: Trouble | null;
  /** The address beneath which styles and scripts of this page lie. */
  readonly assets: string;
}

export function NoSitePage({ trouble, assets }: NoSitePageProps): VNode {
  const heading = trouble ? troubleHeading(trouble) : "The site is being built.";
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>{heading}</title>
        <link rel="icon" type="image/svg+xml" href={`${assets}icon.svg`} />
        <link rel="stylesheet" href={`${assets}no-site.css`} />
      </head>
      <body>
        <main class="no-site">
          <header class="opening">
            <h1>{heading}</h1>
            <p class="lede">
              {trouble
                ? "There is no site to show yet. It is built again when you save, and this page loads by itself."
                : "The first time takes longest, for every photograph is made ready. This page loads by itself."}
            </p>
          </header>
          {trouble && (
            <section class="trouble-list">
              <TroubleList trouble={trouble} />
            </section>
          )}
        </main>
      </body>
    </html>
  );
}
