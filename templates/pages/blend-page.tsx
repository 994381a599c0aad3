/** A series of blends: its tiles in a line or a triangle, each with its computed formula. */
import type { VNode } from "preact";
import type { CatalogueGlaze } from "../../src/catalogue/glazes.ts";
import { mindingOfGlazes } from "../../src/catalogue/minding.ts";
import type { CatalogueBlend } from "../../src/catalogue/mixing/blends.ts";
import { type Oxide, oxides } from "../../src/terms/oxides.ts";
import { BlendLayout } from "../mixing/blend-layout.tsx";
import { loudWords } from "../mixing/hazards.tsx";
import { MindingLines } from "../mixing/minding.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import { Formula } from "../parts/formula.tsx";
import type { Frame } from "../parts/frame.ts";
import { count, listed } from "../words/english/numbers.ts";
import { formatMoles, sharesWords } from "../words/mixing/chemistry.ts";

export interface BlendPageProps {
  readonly frame: Frame;
  readonly blend: CatalogueBlend;
  /** The glazes of its members, in their order. */
  readonly glazes: readonly CatalogueGlaze[];
  /** The tiles of each layout, in the order of the members. */
  readonly tiles: readonly (readonly (TileEntry | null)[])[];
}

export function BlendPage({ frame, blend, glazes, tiles }: BlendPageProps): VNode {
  const sentence = blendSentence(blend);
  const laidOut = Math.max(1, Math.floor(placesOnAPage / Math.max(1, blend.members.length)));
  return (
    <Document
      styles="blend"
      frame={frame}
      title={blend.name}
      summary={sentence}
      section="glazes"
      kind="entry blend-page"
    >
      <header class="opening">
        <h1>{blend.name}</h1>
        <p class="lede">{sentence}</p>
      </header>
      {blend.layouts.slice(0, laidOut).map(({ set }, i) => (
        <section>
          <h2>{set ? <a href={frame.root + set.url}>{set.name}</a> : "Tiles in no set"}</h2>
          <BlendLayout root={frame.root} blend={blend} glazes={glazes} tiles={tiles[i] ?? []} />
        </section>
      ))}
      <OtherLayouts root={frame.root} blend={blend} laidOut={laidOut} />
      {blend.layouts.length === 0 && (
        <p class="empty">
          No tiles yet. Tiles with one of these glazes alone are shown here, in order.
        </p>
      )}
      <MindingLines
        root={frame.root}
        minding={mindingOfGlazes(endsOf(blend, glazes))}
        title="Take care when mixing and firing; every blend of them needs the same care"
      />
      <Formulas root={frame.root} blend={blend} glazes={glazes} />
    </Document>
  );
}

/** So many places of all layouts together: two triangles of eleven a side. */
const placesOnAPage = 132;

/** So many sets are named that were laid out as well. */
const setsNamed = 24;

/** Where the same blend was made more often than a page has room to lay out. */
function OtherLayouts(props: {
  readonly root: string;
  readonly blend: CatalogueBlend;
  readonly laidOut: number;
}): VNode | null {
  const others = props.blend.layouts.slice(props.laidOut);
  if (others.length === 0) return null;
  const sets = others.flatMap(({ set }) => set ?? []);
  return (
    <section>
      <h2>Made {count(others.length, "more time")}</h2>
      <ul class="names-list">
        {sets.slice(0, setsNamed).map(({ name, url }) => (
          <li>
            <a href={props.root + url}>{name}</a>
          </li>
        ))}
        {sets.length > setsNamed && <li>{count(sets.length - setsNamed, "other set")}</li>}
      </ul>
    </section>
  );
}

function endsOf(
  { ends }: CatalogueBlend,
  glazes: readonly CatalogueGlaze[],
): readonly CatalogueGlaze[] {
  return ends.flatMap(({ id }) => glazes.find((glaze) => glaze.id === id) ?? []);
}

/** `A line blend by dry weight, in 6 steps from Eider to Saltern cobalt.` */
export function blendSentence({ kind, by, ends, members }: CatalogueBlend): string {
  const how = by === "volume" ? "by volume" : "by dry weight";
  const between = listed(ends.map(({ name }) => name));
  return `A ${kind} blend ${how} of ${between}: ${count(members.length, "glaze")}, the ${kind === "line" ? "ends" : "corners"} included.`;
}

/** So many formulas in a table. */
const formulasOnAPage = 30;

/** The unity formulas of the members, or why there are none. */
function Formulas(props: {
  readonly root: string;
  readonly blend: CatalogueBlend;
  readonly glazes: readonly CatalogueGlaze[];
}): VNode {
  const { root, blend, glazes } = props;
  const shown = oxides.filter((oxide) =>
    glazes.some(({ chemistry }) => (chemistry?.unity?.[oxide] ?? 0) >= 0.0005),
  );
  if (shown.length === 0)
    return (
      <p class="quiet measure">
        None of them has a computed formula:{" "}
        {blend.by === "volume"
          ? "measured by volume, nobody knows how much dry glaze each part held."
          : "what they are made of is not known."}
      </p>
    );
  return (
    <section>
      <h2>Unity formulas</h2>
      <div class="scroll">
        <table class="formulas">
          <thead>
            <tr>
              <th scope="col">Glaze</th>
              <th scope="col">Shares, %</th>
              {shown.map((oxide) => (
                <th scope="col">
                  <Formula of={oxide} />
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {blend.members.slice(0, formulasOnAPage).map(({ glaze, shares }, i) => (
              <tr>
                <th scope="row">
                  <a href={root + glaze.url}>{glaze.name}</a>
                  <LoudOf glaze={glazes[i]} />
                </th>
                <td>{sharesWords(shares)}</td>
                {shown.map((oxide) => (
                  <td>{molesOf(glazes[i], oxide)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="quiet measure">
        Shares of {listed(blend.ends.map(({ name }) => name))}, in this order. Formulas are moles to
        one mole of all fluxes together, computed from the recipes.
        {blend.members.length > formulasOnAPage &&
          ` These are ${formulasOnAPage} of ${count(blend.members.length, "glaze")}; each glaze’s own page has its formula.`}
      </p>
    </section>
  );
}

function LoudOf({ glaze }: { readonly glaze: CatalogueGlaze | undefined }): VNode | null {
  const loud = loudWords(glaze?.hazards ?? []);
  return loud ? <span class="loud-words"> {loud}</span> : null;
}

function molesOf(glaze: CatalogueGlaze | undefined, oxide: Oxide): string {
  const moles = glaze?.chemistry?.unity?.[oxide] ?? 0;
  return moles >= 0.0005 ? formatMoles(moles) : "";
}
