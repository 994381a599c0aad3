/** What came out of the kiln, and what was seen later; each word leads to where else it was seen. */
import type { ComponentChildren, VNode } from "preact";
import type { CatalogueTile } from "../../src/catalogue/tiles.ts";
import type { Result } from "../../src/records/tile.ts";
import { capital, formatDay, spoken } from "../words/english/numbers.ts";
import { againSentence, fateSentence, runWords, stageName } from "../words/tile/outcome.ts";
import { Swatches } from "./swatches.tsx";

interface OutcomeProps {
  readonly root: string;
  readonly tile: CatalogueTile;
}

export function Outcome({ root, tile }: OutcomeProps): VNode {
  return (
    <section class="outcome">
      <h2>What came out</h2>
      {tile.results.length === 0 && tile.fate === null && <p>{capital(stageName(tile.stage))}.</p>}
      {tile.fate && <p>{fateSentence(tile.fate)}</p>}
      {tile.results.map((result) => (
        <p>
          {tile.results.length > 1 && result.after && <span class="code">{result.after} </span>}
          <Look root={root} look={result} />{" "}
          {result.again && <b class={`again ${result.again}`}>{againSentence(result.again)}</b>}
          {result.nextTime && <> Next time: {result.nextTime}.</>}
        </p>
      ))}
      {tile.later.map((look) => (
        <p>
          Looked at again on {formatDay(look.on)}: <Look root={root} look={look} />
        </p>
      ))}
      {tile.colour && <Swatches root={root} tile={tile.id} colour={tile.colour} />}
    </section>
  );
}

type Seen = Pick<Result, "surface" | "effects" | "faults" | "run">;

/** `Surface: satin. Effects: breaking, pooling. No fault found. It ran 3 mm.` */
function Look({ root, look }: { readonly root: string; readonly look: Seen }): VNode {
  const { surface = [], effects = [], faults = [], run } = look;
  const isSound = faults.includes("none");
  const parts: ComponentChildren[] = [
    listOf("Surface", surface, (word) => `${root}surfaces/${word}.html`),
    listOf(effects.length === 1 ? "Effect" : "Effects", effects, viewOf(root, "effect")),
    isSound
      ? "No fault found. "
      : listOf(faults.length === 1 ? "Fault" : "Faults", faults, viewOf(root, "fault")),
    run === undefined ? null : `It ${runWords(run)}.`,
  ];
  const told = parts.filter(Boolean);
  return <>{told.length > 0 ? told : "No result recorded."}</>;
}

/** The wall, narrowed to one value of a facet; without a script, the whole of it. */
function viewOf(root: string, facet: string) {
  return (word: string) => `${root}index.html?${facet}=${word}`;
}

function listOf(
  name: string,
  words: readonly string[],
  address: (word: string) => string,
): ComponentChildren {
  if (words.length === 0) return null;
  return (
    <>
      {name}:{" "}
      {words.map((word, i) => (
        <>
          {i > 0 && ", "}
          <a href={address(word)}>{spoken(word)}</a>
        </>
      ))}
      .{" "}
    </>
  );
}
