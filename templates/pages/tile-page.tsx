/** A tile: its photograph, what was done, what the kiln did, what came out, how to do it again. */
import type { VNode } from "preact";
import { firingsOf } from "../../src/catalogue/kilns/tile-firings.ts";
import { tileWork } from "../linked/things.ts";
import { trailTo } from "../linked/trail.ts";
import { CoatStack } from "../parts/coat-stack.tsx";
import { Document } from "../parts/document.tsx";
import { LeachTests } from "../parts/leach-tests.tsx";
import { leadPictureOf } from "../parts/lead-picture.ts";
import { Cautions, Quotation } from "../parts/notes.tsx";
import { OneChange, TwoChanges } from "../parts/one-change.tsx";
import { Outcome } from "../parts/outcome.tsx";
import { Plates } from "../parts/plates.tsx";
import { RecordFoot } from "../parts/record-foot.tsx";
import { RecordStory } from "../parts/record-story.tsx";
import { TileFiringWords } from "../parts/tile-firing.tsx";
import { Strip } from "../parts/wall.tsx";
import { partWords } from "../words/english/turning.ts";
import { tileHistory } from "../words/tile/history.ts";
import { tileSentence } from "../words/tile/outcome.ts";
import { AgainCard } from "./tile-again.tsx";
import type { TilePageProps } from "./tile-props.ts";

export function TilePage(props: TilePageProps): VNode {
  const { frame, tile, names } = props;
  const title = names || "A tile without glaze";
  return (
    <Document
      styles="tile"
      frame={frame}
      title={`${tile.id}: ${title}`}
      summary={`Test tile ${tile.id}: ${title}. ${tileSentence(tile)}`}
      section="wall"
      lead={leadPictureOf(tile)}
      linked={[tileWork(frame, tile, title), trailTo(frame, "wall", tile.id, tile.set)]}
      kind="spread"
      scripts={["assets/photograph.js"]}
    >
      <Plates root={frame.root} tile={tile} />
      <article class="account">
        <header>
          <p class="code plate-number" id="code">
            {tile.id}
          </p>
          <h1>{title}</h1>
          <Whereabouts {...props} />
        </header>
        <Account {...props} />
      </article>
      <Neighbours {...props} />
      <OneChange own={ownOf(props)} groups={props.oneChange} />
      {props.twoChanges && <TwoChanges own={ownOf(props)} group={props.twoChanges} />}
      {props.related.map(({ title: heading, url, of, tiles }) => (
        <section class="related">
          <h2>
            <a href={frame.root + url}>{heading}</a>{" "}
            {tiles.length < of && partWords(tiles.length, of)}
          </h2>
          {tiles.length > 0 && <Strip root={frame.root} tiles={tiles} />}
        </section>
      ))}
      <RecordFoot of={props.foot} />
      <RecordStory of={tileHistory(props.story)} />
    </Document>
  );
}

function ownOf({ frame: { root }, tile: { id, pictures, stage } }: TilePageProps) {
  const picture = pictures.find(({ role }) => role === "result") ?? null;
  return { root, id, picture, stage };
}

/** The ways to the tiles beside it on the wall. */
function Neighbours({ frame: { root }, tile, before, after }: TilePageProps): VNode {
  return (
    <nav class="neighbours" aria-label="Beside it on the wall" data-root={root} data-url={tile.url}>
      {before && (
        <a rel="prev" href={root + before.url}>
          before: <span class="code">{before.id}</span>
        </a>
      )}
      {after && (
        <a rel="next" href={root + after.url}>
          next: <span class="code">{after.id}</span>
        </a>
      )}
    </nav>
  );
}

function Whereabouts({ frame: { root }, tile }: TilePageProps): VNode {
  return (
    <p class="whereabouts">
      {tileSentence(tile)}
      {tile.set && (
        <>
          {" "}
          In the set <a href={root + tile.set.url}>{tile.set.name}</a>.
        </>
      )}
      {tile.maker?.url && (
        <span class="screen">
          {" "}
          <a href={root + tile.maker.url}>More by {tile.maker.name}</a>.
        </span>
      )}
    </p>
  );
}

function Account(props: TilePageProps): VNode {
  const { frame, tile, view } = props;
  const firings = firingsOf(tile.steps);
  return (
    <>
      <section class="done">
        <h2>What was done</h2>
        <CoatStack root={frame.root} view={view} {...tile} />
      </section>
      <section class="kiln">
        <h2>What the kiln did</h2>
        {firings.length === 0 && <p>It has not been fired yet.</p>}
        {firings.map((firing) => (
          <TileFiringWords root={frame.root} firing={firing} unit={props.unit} />
        ))}
      </section>
      <Outcome root={frame.root} tile={tile} />
      <Quotation notes={tile.notes} by={tile.maker?.name} />
      <Cautions notes={tile.cautions} />
      <LeachTests tests={tile.leachTests} />
      <AgainCard {...props} />
    </>
  );
}
