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
      <div class="apart-head">
        <h2 id="one-change">One change apart</h2>
      </div>
      <div class="changes">
        {groups.map(({ heading, ...group }) => (
          <section>
            <h3>{heading}</h3>
            <Group own={own} {...group} />
          </section>
        ))}
      </div>
    </section>
  );
}

/** Tiles that differ in two things: shown beside those that differ in one, and never among them. */
export function TwoChanges(props: { readonly own: OwnTile; readonly group: ChangeGroup }): VNode {
  const { heading, tally, pairs, others } = props.group;
  return (
    <section class="related one-change" aria-labelledby="two-changes">
      <h2 id="two-changes">{heading}</h2>
      <p class="tally">{tally}</p>
      <div class="changes">
        {pairs.map((pair) => (
          <section>
            <Pair own={props.own} pair={pair} />
          </section>
        ))}
      </div>
      <Others root={props.own.root} others={others} also={pairs.length > 0} />
    </section>
  );
}

function Group(props: Omit<ChangeGroup, "heading"> & { readonly own: OwnTile }): VNode {
  const { own, tally, pairs, others } = props;
  return (
    <>
      {tally && <p class="tally">{tally}</p>}
      {pairs.map((pair) => (
        <Pair own={own} pair={pair} />
      ))}
      <Others root={own.root} others={others} also={pairs.length > 0} />
    </>
  );
}

function Others(props: {
  readonly root: string;
  readonly others: NamedCodes;
  readonly also: boolean;
}): VNode | null {
  if (props.others.links.length === 0) return null;
  return (
    <p class="quiet">
      {props.also ? "Also " : ""}
      <Codes root={props.root} of={props.others} />
    </p>
  );
}

/** The photographs lead there by the code, the sentence beneath them by what changed. */
function Pair({ own, pair }: { readonly own: OwnTile; readonly pair: ChangePair }): VNode {
  const { id, url, words, result, colour, besides } = pair;
  return (
    <div class="change">
      <a class="both" href={own.root + url} aria-label={id}>
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

/** One file is enough for a picture of this size; the styles keep its place. */
function Small(props: {
  readonly root: string;
  readonly picture: Picture | null;
  readonly stage: Stage;
}): VNode {
  const { root, picture } = props;
  const file = picture && smallFile(picture);
  if (!picture || !file) return <NoPhotograph tile={props} />;
  return <img src={root + file.url} alt="" loading="lazy" />;
}
