/** Tiles named by their codes alone, each a link, and how many more there are. */
import type { VNode } from "preact";
import type { Link } from "../../src/catalogue/link.ts";
import { count } from "../words/english/numbers.ts";

export interface NamedCodes {
  readonly links: readonly Link[];
  /** And so many more. */
  readonly unnamed: number;
}

/** The first of some tiles by their codes; the rest are counted. */
export function nameCodes(
  tiles: readonly { readonly id: string; readonly url: string }[],
  most: number,
): NamedCodes {
  return {
    links: tiles.slice(0, most).map(({ id, url }) => ({ id, name: id, url })),
    unnamed: Math.max(0, tiles.length - most),
  };
}

export function Codes({ root, of }: { readonly root: string; readonly of: NamedCodes }): VNode {
  return (
    <>
      {of.links.map(({ id, url }, i) => (
        <>
          {i > 0 && ", "}
          <a class="code" href={root + url}>
            {id}
          </a>
        </>
      ))}
      {of.unnamed > 0 && ` and ${count(of.unnamed, "more tile")}`}
    </>
  );
}
