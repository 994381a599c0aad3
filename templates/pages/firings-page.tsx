/** Every firing, the newest first, and the kilns that they were in. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import { type FiringLineProps, FiringLines } from "../parts/firing-lines.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { pageTitle } from "../words/english/turning.ts";

export interface FiringsPageProps {
  readonly frame: Frame;
  /** What they have in common: nothing but that they are firings, or a kiln. */
  readonly title: string;
  readonly sentence: string;
  /** The firings of this page of the list. */
  readonly firings: readonly FiringLineProps[];
  readonly turn: Turn;
  /** With the number of their firings. */
  readonly kilns: readonly {
    readonly name: string;
    readonly url: string;
    readonly firings: number;
  }[];
}

/** Of all firings. */
export const firingsSentence =
  "Every kiln load, the newest first: its curve, what was aimed at, what the cones said, and whether the two agree.";

export function FiringsPage(props: FiringsPageProps): VNode {
  const { frame, sentence, firings, turn, kilns } = props;
  const title = pageTitle(props.title, turn.here, turn.pages);
  return (
    <Document
      styles="firings"
      frame={frame}
      title={title}
      summary={sentence}
      section="firings"
      kind="entry"
    >
      <header class="opening">
        <h1>{title}</h1>
        <p class="lede">
          {firings.length > 0
            ? sentence
            : "No firings yet. Add a record in tiles/firings/ and it shows here."}
        </p>
        {kilns.length > 0 && (
          <nav class="way-line" aria-label="By kiln">
            <h2>Kilns</h2>
            <ul>
              {kilns.map((kiln) => (
                <li>
                  <a href={frame.root + kiln.url}>
                    {kiln.name} <small>{kiln.firings}</small>
                  </a>
                </li>
              ))}
            </ul>
          </nav>
        )}
      </header>
      {firings.length > 0 && <FiringLines root={frame.root} firings={firings} withKiln />}
      <TurnPages root={frame.root} turn={turn} many="firings" />
    </Document>
  );
}
