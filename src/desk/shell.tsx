/** The document around every page of the desk. */
import type { ComponentChildren, VNode } from "preact";
import type { DeskPage } from "./page.ts";
import type { Elsewhere } from "./tablet/tablet.ts";
import { whereShown } from "./tablet/words.ts";
import type { DeskArchive } from "./types.ts";
import { unreadWords } from "./unread.ts";

interface ShellProps {
  readonly archive: DeskArchive;
  /** The page that is shown; undefined for the desk's first. */
  readonly page: DeskPage | undefined;
  readonly pages: readonly DeskPage[];
  /** Lets the page's script ask for more than pages. */
  readonly token: string;
  readonly elsewhere: Elsewhere | undefined;
  readonly children: ComponentChildren;
}

export function Shell(props: ShellProps): VNode {
  const { archive, page, pages, token, elsewhere, children } = props;
  const { studio } = archive.archive.studio;
  const script = page ? page.script : typeof elsewhere === "object" ? "tablet" : undefined;
  const unread = unreadWords(archive);
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta name="tilebook-token" content={token} />
        <title>{`${page?.title ?? "The desk"} · ${studio}`}</title>
        <link rel="icon" type="image/svg+xml" href="/desk/assets/icon.svg" />
        <link rel="stylesheet" href="/desk/assets/desk.css" />
        {script && <script defer src={`/desk/assets/${script}.js`} />}
      </head>
      <body>
        <a class="skip" href="#main">
          Skip to the page
        </a>
        <Head studio={studio} page={page} pages={pages} />
        <main id="main" class={`desk ${page?.name ?? "first"}`} tabIndex={-1}>
          {unread && (
            <p class="unread" role="note">
              {unread}
            </p>
          )}
          {children}
        </main>
        <footer class="site-foot">
          <p>{whereShown(elsewhere)}</p>
        </footer>
      </body>
    </html>
  );
}

interface HeadProps extends Pick<ShellProps, "page" | "pages"> {
  readonly studio: string;
}

function Head({ studio, page, pages }: HeadProps): VNode {
  return (
    <header class="desk-head">
      <a class="studio" href="/">
        {studio}
      </a>
      <nav aria-label="The desk">
        <ul>
          <Way href="/desk/" title="The desk" isHere={page === undefined} />
          {pages.map((each) => (
            <Way href={`/desk/${each.name}`} title={each.title} isHere={each === page} />
          ))}
        </ul>
      </nav>
    </header>
  );
}

function Way(props: {
  readonly href: string;
  readonly title: string;
  readonly isHere: boolean;
}): VNode {
  return (
    <li>
      <a href={props.href} {...(props.isHere && { "aria-current": "page" as const })}>
        {props.title}
      </a>
    </li>
  );
}
