/** The ways from one page of a long list to the others, for everyone and without a script. */
import type { VNode } from "preact";
import { turnedUrl } from "../../src/catalogue/addresses.ts";
import { partSentence } from "../words/english/turning.ts";
import type { Turn } from "./turn.ts";

interface TurnPagesProps {
  readonly root: string;
  readonly turn: Turn;
  /** What is listed: `tiles`. */
  readonly many: string;
}

export function TurnPages({ root, turn, many }: TurnPagesProps): VNode | null {
  const { here, pages } = turn;
  if (pages < 2) return null;
  return (
    <nav class="pages" aria-label={`Pages of ${many}`}>
      <p class="quiet">{partSentence(turn, many)}</p>
      <ul>
        {here > 0 && (
          <li>
            <a rel="prev" href={root + turnedUrl(turn.url, here - 1)}>
              before
            </a>
          </li>
        )}
        {pagesOffered(turn).map((page, i, offered) => (
          <li class={page - (offered[i - 1] ?? page) > 1 ? "gap" : undefined}>
            <a
              href={root + turnedUrl(turn.url, page)}
              {...(page === here && { "aria-current": "page" as const })}
            >
              {page + 1}
            </a>
          </li>
        ))}
        {here < pages - 1 && (
          <li>
            <a rel="next" href={root + turnedUrl(turn.url, here + 1)}>
              next
            </a>
          </li>
        )}
      </ul>
    </nav>
  );
}

/** How many pages before and after this one are offered by their numbers. */
const beside = 2;

/** The first and the last, and those around this one; a gap between them is left out. */
export function pagesOffered({ here, pages }: Pick<Turn, "here" | "pages">): readonly number[] {
  const near = Array.from({ length: 2 * beside + 1 }, (_, i) => here - beside + i);
  const inside = near.filter((page) => page > 0 && page < pages - 1);
  return [0, ...inside, ...(pages > 1 ? [pages - 1] : [])];
}

/** Above a list that goes on: which part of it this is, and the wall with the same choice made. */
export function PartLine(props: TurnPagesProps & { readonly wall: string | null }): VNode | null {
  const { root, turn, many, wall } = props;
  if (turn.pages < 2) return null;
  return (
    <p class="quiet part">
      {partSentence(turn, many)}
      {wall !== null && (
        <>
          {" "}
          <a href={`${root}index.html?${wall}`}>Narrow all of them down on the wall</a>
        </>
      )}
    </p>
  );
}
