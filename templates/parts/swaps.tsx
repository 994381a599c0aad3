/** What changing the order of two glazes did: tiles that differ in nothing else, told beside each other. */
import type { VNode } from "preact";
import type { Link } from "../../src/catalogue/link.ts";

export interface SwapsView {
  /** Of all of them, as strong as their number allows. */
  readonly sentence: string;
  readonly shown: readonly SwapView[];
  /** So many more comparisons. */
  readonly more: number;
}

export interface SwapView {
  readonly tiles: readonly {
    readonly tile: Link;
    /** `Oilskin on top: gloss; fault: running; ran 24 mm.` */
    readonly words: string;
  }[];
  /** The two colours, and what else was not the same. */
  readonly besides: string;
}

export function Swaps({ root, of }: { readonly root: string; readonly of: SwapsView }): VNode {
  return (
    <section class="swaps" id="order">
      <h2>What changing the order did</h2>
      <p class="measure">{of.sentence}</p>
      {of.shown.length > 0 && (
        <ol>
          {of.shown.map(({ tiles, besides }) => (
            <li>
              {tiles.map(({ tile, words }) => (
                <p>
                  <a class="code" href={root + tile.url}>
                    {tile.name}
                  </a>{" "}
                  {words}
                </p>
              ))}
              <p class="quiet">{besides}</p>
            </li>
          ))}
        </ol>
      )}
      {of.more > 0 && <p class="quiet">{of.more} more such comparisons are in data/grid.json.</p>}
    </section>
  );
}
