/** What two mixed glazes become where one lies over the other. */
import type { VNode } from "preact";
import type { CatalogueGlaze } from "../../src/catalogue/glazes.ts";
import type { MeltedCoats, Overlap } from "../../src/catalogue/mixing/overlaps.ts";
import type { Melt } from "../../src/chemistry/overlap.ts";
import { type Oxide, oxides } from "../../src/terms/oxides.ts";
import { Formula } from "../parts/formula.tsx";
import { count, listed, listedInShort } from "../words/english/numbers.ts";
import { asPerCent, fixed, formatMoles } from "../words/mixing/chemistry.ts";
import { MeltPath } from "./melt-path.tsx";

export /** One of the two glazes. */
type Melting = Pick<CatalogueGlaze, "chemistry" | "name">;

interface OverlapProps {
  readonly overlap: Overlap;
  readonly over: Melting;
  readonly under: Melting;
}

export function OverlapSection({ overlap, over, under }: OverlapProps): VNode {
  return (
    <section class="overlap" id="overlap">
      <h2>What the two make together</h2>
      <p class="measure">
        Where {over.name} is over {under.name} they melt into each other, though never completely.
        These are the figures as if they were stirred together, by the dry weight of the coats.
      </p>
      <div class="columns">
        <div>
          {overlap.coats.map((melted) => (
            <MeltedTable melted={melted} over={over} under={under} />
          ))}
          {overlap.coats.length === 0 && (
            <p class="empty">
              No tile records how many coats of each it has, so only the path between them is shown.
            </p>
          )}
          {overlap.coats.length > 0 && overlap.unknown.length > 0 && (
            <p class="quiet">
              {listed(overlap.unknown)}: coats not recorded, or not the same number all over.
            </p>
          )}
        </div>
        <figure>
          <MeltPath overlap={overlap} over={over.name} under={under.name} />
          <PathTable overlap={overlap} over={over.name} />
        </figure>
      </div>
    </section>
  );
}

type Fired = NonNullable<Melt["chemistry"]>;

function perCent(share: number): string {
  return `${(share * 100).toFixed(0)} %`;
}

function MeltedTable(props: {
  readonly melted: MeltedCoats;
  readonly over: Melting;
  readonly under: Melting;
}): VNode {
  const { melted, over, under } = props;
  const { melt, range } = melted;
  const shown = oxides.filter((oxide) =>
    [over.chemistry, melt.chemistry, under.chemistry].some(
      (it) => (it?.unity?.[oxide] ?? 0) >= 0.0005,
    ),
  );
  return (
    <div class="melted">
      <table>
        <caption>
          {count(melted.over, "coat")} over {melted.under} ({listedInShort(melted.tiles)}):{" "}
          {weightWords(melted, over.name)}
        </caption>
        <thead>
          <tr>
            <th scope="col">Unity</th>
            <th scope="col">{under.name}</th>
            <th scope="col">together</th>
            <th scope="col">{over.name}</th>
            <th scope="col">together, % by weight</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((oxide) => (
            <tr>
              <th scope="row">
                <Formula of={oxide} />
              </th>
              <td>{molesOf(under.chemistry, oxide)}</td>
              <td>
                {molesOf(melt.chemistry, oxide)}
                {range && <span class="range">{rangeWords(range, oxide)}</span>}
              </td>
              <td>{molesOf(over.chemistry, oxide)}</td>
              <td>{asPerCent(melt.chemistry?.weightPercent[oxide] ?? 0)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** How much of the melt is the upper glaze, and on what that rests. */
function weightWords({ melt, range }: MeltedCoats, over: string): string {
  const share = `${perCent(melt.upperShare)} of the dry weight is ${over}`;
  if (!range) return `${share}, by the weight that a coat of each leaves.`;
  const [least, most] = range.map(({ upperShare }) => perCent(upperShare));
  return `${share} if coats weigh the same; ${least} to ${most} if a coat of one weighs a third of the other’s or three times as much. The range is in small type.`;
}

function molesOf(chemistry: Pick<Fired, "unity"> | null, oxide: Oxide): string {
  const moles = chemistry?.unity?.[oxide] ?? 0;
  return moles === 0 ? "" : formatMoles(moles);
}

function rangeWords(range: NonNullable<MeltedCoats["range"]>, oxide: Oxide): string {
  const moles = range.map(({ unity }) => unity?.[oxide] ?? 0).sort((a, b) => a - b);
  return moles.map(formatMoles).join("–");
}

function PathTable({
  overlap: { path },
  over,
}: {
  readonly overlap: Overlap;
  readonly over: string;
}) {
  return (
    <table>
      <caption>The path at every tenth</caption>
      <thead>
        <tr>
          <th scope="col">{over}</th>
          <th scope="col">
            <Formula of="SiO2" />
          </th>
          <th scope="col">
            <Formula of="Al2O3" />
          </th>
          <th scope="col">Ratio</th>
        </tr>
      </thead>
      <tbody>
        {path.map(({ upperShare, silica, alumina }) => (
          <tr>
            <th scope="row">{perCent(upperShare)}</th>
            <td>{formatMoles(silica)}</td>
            <td>{formatMoles(alumina)}</td>
            <td>{alumina > 0 ? fixed(silica / alumina, 1) : "–"}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
