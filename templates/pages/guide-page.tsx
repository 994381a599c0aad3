/** The guide: how tiles are made, written down, fired and shared. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { renderWords } from "../parts/own-words.ts";

/** What a list says of a page of the guide. */
export interface GuideLine {
  /** The name of its file, without its end. */
  readonly stem: string;
  readonly audience: "makers" | "teachers";
  readonly title: string;
}

export interface GuideEntry extends GuideLine {
  /** Markdown, without the title. */
  readonly words: string;
}

export interface GuideIndexPageProps {
  readonly frame: Frame;
  readonly guide: readonly GuideLine[];
}

export interface GuidePageProps extends GuideIndexPageProps {
  readonly entry: GuideEntry;
}

/** The address of a page of the guide, from the root of the site. */
export function guideUrl(stem: string): string {
  return `guide/${stem}.html`;
}

export function GuidePage({ frame, entry, guide }: GuidePageProps): VNode {
  const { title, words } = entry;
  const addressOf = (page: string) =>
    guide.some(({ stem }) => stem === page) ? frame.root + guideUrl(page) : undefined;
  return (
    <Document
      styles="guide"
      frame={frame}
      title={title}
      summary={`${title}: how it is done with this catalogue.`}
      kind="entry"
    >
      <header class="opening">
        <h1>{title}</h1>
      </header>
      <div
        class="own-words"
        dangerouslySetInnerHTML={{ __html: renderWords(words, { addressOf, lowered: 0 }) }}
      />
      <nav class="guide-ways no-print" aria-label="The guide">
        <GuideLists frame={frame} guide={guide} here={entry.stem} />
      </nav>
    </Document>
  );
}

export function GuideIndexPage({ frame, guide }: GuideIndexPageProps): VNode {
  return (
    <Document
      styles="guide"
      frame={frame}
      title="How it is done"
      summary="How tiles are made, written down, photographed, fired and shared."
      kind="entry"
    >
      <header class="opening">
        <h1>How it is done</h1>
        <p class="lede">
          From a blank tile to a page that anyone can repeat it from. No computer skills are needed
          for the first part.
        </p>
      </header>
      <GuideLists frame={frame} guide={guide} />
    </Document>
  );
}

const headings = { makers: "For whoever makes tiles", teachers: "For whoever runs a class" };

function GuideLists(props: GuideIndexPageProps & { readonly here?: string }): VNode {
  const { frame, guide, here } = props;
  return (
    <div class="guide-lists">
      {(["makers", "teachers"] as const).map((audience) => (
        <section>
          <h2>{headings[audience]}</h2>
          <ol>
            {guide
              .filter((line) => line.audience === audience)
              .map(({ stem, title }) => (
                <li>
                  {stem === here ? (
                    <span aria-current="page">{title}</span>
                  ) : (
                    <a href={frame.root + guideUrl(stem)}>{title}</a>
                  )}
                </li>
              ))}
          </ol>
        </section>
      ))}
    </div>
  );
}
