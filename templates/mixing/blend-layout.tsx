/** The tiles of a blend where their shares put them: a line or a triangle. */
import type { VNode } from "preact";
import type { CatalogueGlaze } from "../../src/catalogue/glazes.ts";
import type { CatalogueBlend } from "../../src/catalogue/mixing/blends.ts";
import type { TileEntry } from "../parts/entry.ts";
import { SmallPhotograph } from "../parts/photograph.tsx";
import { NoPhotograph } from "../parts/wall.tsx";
import { sharesWords } from "../words/mixing/chemistry.ts";
import { loudWords } from "./hazards.tsx";
import { Triangle } from "./triangle.tsx";

export interface BlendLayoutProps {
  readonly root: string;
  readonly blend: Pick<CatalogueBlend, "kind" | "ends" | "members">;
  /** The glazes of its members, in their order. */
  readonly glazes: readonly Pick<CatalogueGlaze, "hazards">[];
  /** A tile for each member; null where there is none. */
  readonly tiles: readonly (TileEntry | null)[];
}

export function BlendLayout(props: BlendLayoutProps): VNode {
  const { root, blend, glazes, tiles } = props;
  if (blend.kind === "line") return <Line {...props} />;
  const places = blend.members.map(({ glaze, shares }, i) => {
    const tile = tiles[i] ?? null;
    const loud = loudWords(glazes[i]?.hazards ?? []);
    const told = [glaze.name, sharesWords(shares), loud].filter(Boolean).join(", ");
    return {
      shares,
      code: tile?.id ?? null,
      url: tile?.url ?? glaze.url,
      words: tile ? `${tile.id}: ${told}` : told,
      picture: tile?.picture?.plain ?? null,
    };
  });
  const [top, left, right] = blend.ends;
  return (
    <div class="scroll">
      <Triangle root={root} places={places} />
      <p class="quiet">
        {top?.name} at the top, {left?.name} at the left, {right?.name} at the right.
      </p>
    </div>
  );
}

function Line({ root, blend, glazes, tiles }: BlendLayoutProps): VNode {
  return (
    <ol class="wall strip blend-line">
      {blend.members.map(({ glaze, shares }, i) => {
        const tile = tiles[i];
        const loud = loudWords(glazes[i]?.hazards ?? []);
        return (
          <li>
            <a href={root + (tile?.url ?? glaze.url)}>
              {tile?.picture ? (
                <SmallPhotograph root={root} picture={tile.picture} turn="late" />
              ) : (
                <NoPicture tile={tile ?? null} />
              )}
              <span class="code">{tile?.id ?? "–"}</span>
              <span class="shares">{sharesWords(shares)}</span>
              <span class="names">
                {glaze.name}
                {loud && <span class="loud-words"> {loud}</span>}
              </span>
            </a>
          </li>
        );
      })}
    </ol>
  );
}

function NoPicture({ tile }: { readonly tile: TileEntry | null }): VNode {
  if (tile) return <NoPhotograph tile={tile} />;
  return (
    <span class="photograph none">
      <span>no tile yet</span>
    </span>
  );
}
