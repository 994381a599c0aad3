/** Tiles one change apart: both photographs, what changed, what came of it. */
import type { VNode } from "preact";
import type { Picture } from "../../src/catalogue/pictures.ts";
import type { Stage } from "../../src/terms/choices.ts";
import { Codes, type NamedCodes } from "./codes.tsx";
import { smallFile } from "./photograph.tsx";
import { NoPhotograph } from "./wall.tsx";

/** A tile beside the page's own. */
export interface ChangePair {
  readonly id: string;
  /** Relative to the root. */
  readonly url: string;
  readonly picture: Picture | null;
  readonly stage: Stage;
  /** What changed: `The same, cooled slowly, not left to cool.` */
  readonly words: string;
  readonly result: string;
  /** Whether the colours differ by more than like tiles do; empty where one was not measured. */
  readonly colour: string;
  /** What else was not the same, or not written down; empty where nothing was. */
  readonly besides: string;
}

/** Tiles that differ from the page's own in one kind of thing. */
export interface ChangeGroup {
  readonly heading: string;
  /** How often like tiles came out alike; empty where they are not alike. */
  readonly tally: string;
  readonly pairs: readonly ChangePair[];
  /** More of them, by their codes alone. */
  readonly others: NamedCodes;
}

interface OwnTile {
  readonly root: string;
  readonly id: string;
  readonly picture: Picture | null;
  readonly stage: Stage;
}

export function OneChange(props: {
  readonly own: OwnTile;
  readonly groups: readonly ChangeGroup[];
}): VNode | null {
  const { own, groups } = props;
  if (groups.length === 0) return null;
  return (
    <section class="related one-change" aria-labelledby="one-change">
      <h2 id="one-change">One change apart</h2>
      <div class="changes">
        {groups.map(({ heading, tally, pairs, others }) => (
          <section>
            <h3>{heading}</h3>
            {tally && <p class="tally">{tally}</p>}
            {pairs.map((pair) => (
              <Pair own={own} pair={pair} />
            ))}
            {others.links.length > 0 && (
              <p class="quiet">
                {pairs.length > 0 ? "Also " : ""}
                <Codes root={own.root} of={others} />
              </p>
            )}
          </section>
        ))}
      </div>
    </section>
  );
}

function Pair({ own, pair }: { readonly own: OwnTile; readonly pair: ChangePair }): VNode {
  const { id, url, words, result, colour, besides } = pair;
  return (
    <div class="change">
      <a class="both" href={own.root + url} aria-label={`${id}: ${words}`}>
        <Small {...own} />
        <Small root={own.root} {...pair} />
      </a>
      <p class="codes" aria-hidden="true">
        <span class="code">{own.id}</span> <span class="code">{id}</span>
      </p>
      <p>
        <a href={own.root + url}>{words}</a>
      </p>
      <p class="came">
        <span class="code">{id}</span> {[result, colour].filter(Boolean).join(" ")}
      </p>
      {besides && <p class="quiet">{besides}</p>}
    </div>
  );
}

/** One file is enough for a picture of this size. */
function Small(props: {
  readonly root: string;
  readonly picture: Picture | null;
  readonly stage: Stage;
}): VNode {
  const { root, picture } = props;
  const file = picture && smallFile(picture);
  if (!picture || !file) return <NoPhotograph tile={props} />;
  const { width, height } = picture;
  return (
    <img
      src={root + file.url}
      width={width}
      height={height}
      alt=""
      loading="lazy"
      decoding="async"
    />
  );
}
