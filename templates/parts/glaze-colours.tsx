/** A glaze's colour alone: over each clay, by cones across and by coats down. */
import type { VNode } from "preact";
import type { GlazeOnClay } from "../../src/catalogue/colours/glaze-colours.ts";
import type { MeasuredAlone } from "../../src/catalogue/colours/measured-alone.ts";
import type { ColourTrust } from "../../src/catalogue/colours/trust.ts";
import type { CatalogueGlaze } from "../../src/catalogue/glazes.ts";
import { pickEvenly } from "../../src/catalogue/pick-evenly.ts";
import { type Cone, compareCones } from "../../src/terms/cones.ts";
import {
  aloneWords,
  findingSentence,
  fireWords,
  tableCaption,
  type Varying,
  whatVaries,
} from "../words/colour/glaze-alone.ts";
import { trustSentence } from "../words/colour/measured.ts";
import { shownWords } from "../words/colour/plate.ts";
import { capital, count } from "../words/english/numbers.ts";
import { ColourSwatch } from "./colour-swatch.tsx";

interface ColoursAloneProps {
  readonly root: string;
  readonly glaze: Pick<CatalogueGlaze, "colourFindings" | "name" | "onClays">;
  readonly trust: ColourTrust | null;
}

export function ColoursAlone({ root, glaze, trust }: ColoursAloneProps): VNode {
  const { name, onClays, colourFindings } = glaze;
  const varying = whatVaries(onClays);
  return (
    <section class="colours-alone">
      <h2>Colour alone</h2>
      {onClays.length === 0 ? (
        <p class="empty">
          {`Not measured yet. A tile that has ${name} and no other glaze, with a photograph of it, shows its colour here.`}
        </p>
      ) : (
        <>
          <ColoursTable root={root} name={name} onClays={onClays} varying={varying} />
          {colourFindings.length > 0 && (
            <ul class="colour-findings">
              {colourFindings.slice(0, findingsTold).map((finding) => (
                <li>{findingSentence(finding, varying)}</li>
              ))}
              {colourFindings.length > findingsTold && (
                <li>
                  {count(colourFindings.length - findingsTold, "other difference")} like these.
                </li>
              )}
            </ul>
          )}
          <p class="quiet measure">{trustSentence(trust)}</p>
        </>
      )}
    </section>
  );
}

/** So many differences are told, and so many clays shown. */
const [findingsTold, claysShown] = [12, 12];

interface ColoursTableProps {
  readonly root: string;
  readonly name: string;
  readonly onClays: readonly GlazeOnClay[];
  readonly varying: Varying;
}

function ColoursTable(props: ColoursTableProps): VNode {
  const { name, onClays, varying } = props;
  const cones = [...new Set(conesOf(onClays))];
  return (
    <>
      <p class="quiet" id="alone-caption">
        {tableCaption(name, onClays, varying)}
      </p>
      <div class="scroll">
        <table class="alone-table" aria-labelledby="alone-caption">
          <thead>
            <tr>
              <th scope="col">Cone</th>
              {cones.map((cone) => (
                <th scope="col">
                  {cone === null ? "not recorded" : <span class="code">{cone}</span>}
                </th>
              ))}
            </tr>
          </thead>
          {onClays.slice(0, claysShown).map((on) => (
            <ClayRows {...props} on={on} cones={cones} />
          ))}
        </table>
      </div>
      {onClays.length > claysShown && (
        <p class="quiet">
          These are {claysShown} of {onClays.length} clays and fires; the tiles on the others are
          among those with {name} alone.
        </p>
      )}
    </>
  );
}

/** Every cone of every clay, cool to hot, so that one clay's stand above another's. */
function conesOf(onClays: readonly GlazeOnClay[]): readonly (Cone | null)[] {
  const cones = onClays.flatMap(({ measured }) => measured.map(({ cone }) => cone));
  return [
    ...cones.filter((cone) => cone !== null).sort(compareCones),
    ...cones.filter((cone) => cone === null),
  ];
}

function ClayRows({
  on,
  cones,
  ...props
}: ColoursTableProps & { readonly on: GlazeOnClay; readonly cones: readonly (Cone | null)[] }) {
  const counts = [...new Set(on.measured.map(({ coats }) => coats))].sort(
    (a, b) => (a ?? Number.POSITIVE_INFINITY) - (b ?? Number.POSITIVE_INFINITY),
  );
  return (
    <tbody>
      <tr class="ground-row">
        <th scope="rowgroup" colSpan={cones.length + 1}>
          <Ground root={props.root} on={on} />
        </th>
      </tr>
      {counts.map((coats) => (
        <tr>
          <th scope="row">{coats === null ? "not counted" : count(coats, "coat")}</th>
          {cones.map((cone) => (
            <Cell
              {...props}
              measured={on.measured.filter((one) => one.coats === coats && one.cone === cone)}
            />
          ))}
        </tr>
      ))}
    </tbody>
  );
}

function Ground({ root, on }: { readonly root: string; readonly on: GlazeOnClay }): VNode {
  const fire = fireWords(on);
  return (
    <>
      {on.clay ? <a href={root + on.clay.url}>{on.clay.name}</a> : "Clay not named"}
      {fire && `, ${fire}`}
    </>
  );
}

interface CellProps {
  readonly root: string;
  readonly measured: readonly MeasuredAlone[];
  readonly varying: Varying;
}

/** Of many tiles made alike, as the twins of a control tile are, so many stand for all. */
const tilesInACell = 12;

/** Tiles made alike stand side by side. */
function Cell({ root, measured, varying }: CellProps): VNode {
  if (measured.length === 0) return <td />;
  const shown = pickEvenly(measured, tilesInACell);
  return (
    <td>
      <ul class={shown.length > 1 ? "swatch-row several" : "swatch-row"}>
        {shown.map((one) => (
          <li>
            <MeasuredTile root={root} measured={one} about={aloneWords(one, varying)} />
          </li>
        ))}
      </ul>
      {shown.length < measured.length && (
        <p class="shown">{shownWords(shown.length, measured.length)}</p>
      )}
    </td>
  );
}

function MeasuredTile(props: {
  readonly root: string;
  readonly measured: MeasuredAlone;
  readonly about: string;
}): VNode {
  const { tile, colour } = props.measured;
  return (
    <a class="measured-tile" href={props.root + tile.url}>
      <ColourSwatch hex={colour.hex} />
      <span class="code">{tile.id}</span>
      <span class="named">{capital(colour.name)}</span>
      {props.about && <span class="about">{props.about}</span>}
    </a>
  );
}
