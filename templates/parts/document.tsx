/** The whole document around a page: head, masthead, main part, foot. */
import type { ComponentChildren, VNode } from "preact";
import { Hatch } from "../drawing/hatch.tsx";
import { DataBlock, type Linked } from "../linked/data-block.tsx";
import { missingSentence } from "../words/site/waiting.ts";
import type { Frame } from "./frame.ts";
import type { LeadPicture } from "./lead-picture.ts";
import { Masthead } from "./masthead.tsx";
import type { Section } from "./sections.ts";
import { SiteFoot } from "./site-foot.tsx";
import { SocialCard } from "./social-card.tsx";

export interface DocumentProps {
  readonly frame: Frame;
  readonly title: string;
  /** What the page is, for search engines and those who share its link. */
  readonly summary: string;
  readonly section?: Section | undefined;
  /** The photograph that it leads with. */
  readonly lead?: LeadPicture | null;
  /** The file that tells programs of all data files, relative to the root. */
  readonly describedBy?: string | null;
  /** What it is about, as linked data. */
  readonly linked?: readonly Linked[];
  /** Names of scripts under assets/, and of data files, in the order they run. */
  readonly scripts?: readonly string[];
  /** The name of the page's file of styles, under assets/, which is made for its template. */
  readonly styles: string;
  /** A class for the main part, which its styles are laid under. */
  readonly kind: string;
  /** Where the page leads on to at once, for an address that has changed. */
  readonly leadsTo?: string;
  readonly children: ComponentChildren;
}

/** Sets tiles and glazes beside each other, from any page. */
const everywhere = "assets/set-beside.js";

/** Nothing is loaded from anywhere else, and nothing on a page is a script or a style of its own. */
const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
].join("; ");

export function Document(props: DocumentProps): VNode {
  const { frame, kind, children } = props;
  return (
    <html lang="en">
      <Head {...props} />
      <body>
        <a class="skip" href="#main">
          Skip to the page
        </a>
        <Hatch />
        <Masthead frame={frame} section={props.section} />
        <main id="main" class={kind} tabIndex={-1}>
          <Missing frame={frame} />
          {children}
        </main>
        <SiteFoot frame={frame} />
      </body>
    </html>
  );
}

/** Says on a page that lost something that it did, before anything is counted on it. */
function Missing({ frame: { root, waiting } }: { readonly frame: Frame }): VNode | null {
  if (waiting === null || waiting.here === 0) return null;
  return (
    <p class="missing" role="note">
      {missingSentence(waiting.here)} <a href={`${root}waiting.html`}>What waits</a>
    </p>
  );
}

function Head(props: Omit<DocumentProps, "children">): VNode {
  const { frame, title, summary, styles, scripts = [], leadsTo } = props;
  const { lead = null, linked = [], describedBy = null } = props;
  const { root, canonical, feed, unlisted } = frame;
  return (
    <head>
      <meta charset="utf-8" />
      <meta http-equiv="Content-Security-Policy" content={policy} />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="color-scheme" content="light dark" />
      <title>{title === frame.studio ? title : `${title} · ${frame.studio}`}</title>
      <meta name="description" content={summary} />
      {leadsTo !== undefined && <meta http-equiv="refresh" content={`0; url=${leadsTo}`} />}
      {unlisted && <meta name="robots" content="noindex, nofollow" />}
      {canonical !== null && !unlisted && <link rel="canonical" href={canonical} />}
      {feed !== null && (
        <link
          rel="alternate"
          type="application/atom+xml"
          title={`Newest results of ${frame.studio}`}
          href={root + feed}
        />
      )}
      {describedBy !== null && (
        <link rel="describedby" type="application/json" href={root + describedBy} />
      )}
      {leadsTo === undefined && <SocialCard {...{ frame, title, summary, picture: lead }} />}
      {!unlisted && <DataBlock things={linked} />}
      <link rel="icon" type="image/svg+xml" href={`${root}assets/icon.svg`} />
      <link rel="stylesheet" href={`${root}assets/${styles}.css`} />
      {scripts.map((script) => (
        <script defer src={`${root}${script}`} />
      ))}
      {leadsTo === undefined && <script defer src={`${root}${everywhere}`} />}
    </head>
  );
}
