/** How to do it again: a card that prints on one sheet. */
import type { VNode } from "preact";
import type { CatalogueStep } from "../../src/catalogue/kilns/tile-firings.ts";
import { standsAsAWall } from "../../src/catalogue/runners.ts";
import type { CatalogueTile } from "../../src/catalogue/tiles.ts";
import { MindingLines } from "../mixing/minding.tsx";
import { type Definition, Definitions } from "../parts/definitions.tsx";
import { article, count, listed, spoken } from "../words/english/numbers.ts";
import { recipeSinceNote, recipeSinceWords } from "../words/glaze/history.ts";
import {
  againSentence,
  fateSentence,
  firingSentence,
  pieceName,
  pieceWithTexture,
  runWords,
  textureInOwnWords,
} from "../words/tile/outcome.ts";
import { stepWords } from "../words/tile/steps.ts";
import type { TilePageProps } from "./tile-props.ts";

export function AgainCard(props: TilePageProps): VNode {
  const { tile, names } = props;
  return (
    <section class="again-card" aria-labelledby="again">
      <h2 id="again">{isToBeAvoided(tile) ? "How it was made" : "To do it again"}</h2>
      <p class="card-title">
        <span class="code">{tile.id}</span> {names}
      </p>
      <Verdict tile={tile} />
      <ol class="steps">
        <li>Take {pieceWords(tile)}.</li>
        {tile.steps.map((step) => (
          <li>{cardStep(step, props)}.</li>
        ))}
      </ol>
      <RecipesSince {...props} />
      <Definitions of={cardLines(props)} />
      <MindingLines
        root={props.frame.root}
        minding={tile.minding}
        title="Take care when mixing and firing"
      />
      <p class="quiet">
        Wear a fitted dust mask (FFP3 or P100) where glaze is mixed or sanded, keep the foot clean,
        and put anything that may run on a catch tray. A tile proves nothing about a pot: have ware
        for food leach-tested.
        {tile.steps.some((step) => step.step === "fired" && step.kind === "raku") &&
          ` ${rakuWords}`}
      </p>
      <p class="print-place" data-print="Print this card" />
    </section>
  );
}

/** What is weighed out by a recipe that was changed since may be another glaze. */
function RecipesSince({ frame: { root }, recipesSince }: TilePageProps): VNode | null {
  if (recipesSince.length === 0) return null;
  return (
    <div class="caution">
      {recipesSince.map((since) => (
        <p>
          The recipe of <a href={root + since.glaze.url}>{since.glaze.name}</a>
          {recipeSinceWords(since)}
        </p>
      ))}
      <p class="quiet">{recipeSinceNote(recipesSince)}</p>
    </div>
  );
}

function isToBeAvoided({ again, fate }: CatalogueTile): boolean {
  return again === "no" || fate !== null;
}

/** What failed says so before it is read as a recipe, and why. */
function Verdict({ tile }: { readonly tile: CatalogueTile }): VNode | null {
  const { again, fate, faults } = tile;
  if (!isToBeAvoided(tile) && again !== "changed") return null;
  const found = faults.length > 0 ? `Found: ${listed(faults.map(spoken))}.` : "";
  return (
    <p class="verdict">
      {again && <b class={`again ${again}`}>{againSentence(again)}</b>}{" "}
      {[fate && fateSentence(fate), found].filter(Boolean).join(" ")}
    </p>
  );
}

/** Common practice; in full on the page of the firing. */
const rakuWords =
  "Raku is done outdoors, upwind of the smoke, with gloves and a face shield made for glowing ware. Raku ware is not for food.";

/** A step in its place; a firing with all that is known of it. */
function cardStep(step: CatalogueStep, { tile }: TilePageProps): string {
  return step.step === "fired"
    ? firingSentence(step)
    : stepWords(step, (id) => tile.glazes[id]?.name ?? id);
}

/** `a smooth flat tile of Levels Buff, batch 7, standing at 70°` */
function pieceWords(tile: CatalogueTile): string {
  const { angle, clay, clayBatch } = tile;
  const told = [
    `${pieceWithTexture(tile)} of ${clay?.name ?? "a clay that is not recorded"}`,
    textureInOwnWords(tile),
    clayBatch && `batch ${clayBatch}`,
    angle !== null && `standing at ${angle}°`,
  ];
  return told.filter(Boolean).join(", ");
}

function cardLines({ tile, record, programmes }: TilePageProps): readonly Definition[] {
  const next = tile.results.flatMap((result) => result.nextTime ?? []);
  return [
    ["Coats", coatTotal(tile)],
    ...programmes.map(({ firing, words }): Definition => [`Programme of ${firing}`, words]),
    ["So far", record],
    ["Next time", next.join("; ")],
    ["On an upright wall", uprightWarning(tile)],
  ];
}

function coatTotal({ coatCounts, glazes }: TilePageProps["tile"]): string {
  return coatCounts
    .map(({ glaze, area, coats }) => {
      const name = glazes[glaze]?.name ?? glaze;
      const where = area === "all" ? "" : ` (${area})`;
      return `${name}${where} ${coats === null ? "coats not recorded" : count(coats, "coat")}`;
    })
    .join(", ");
}

/** What a tile that lay flat cannot tell of a standing wall, and what one that stood did. */
function uprightWarning({ shape, angle, run }: TilePageProps["tile"]): string {
  const ran = run === null || run === 0 ? "" : runWords(run);
  const stood = standsAsAWall({ shape, angle });
  if (stood) return ran ? `It ${ran} standing: leave at least that much of the foot bare.` : "";
  const lay = angle
    ? `at ${angle}°`
    : shape === "flat"
      ? "lying flat"
      : `as ${article(pieceName(shape)).toLowerCase()} ${pieceName(shape)}`;
  const begin = ran
    ? `It ${ran} ${lay}; on an upright wall it may run further.`
    : `It was fired ${lay}: on an upright wall the same coats may run.`;
  return `${begin} Leave the foot bare, and try a standing tile first.`;
}
