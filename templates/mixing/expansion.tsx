/** Thermal expansion by each set of factors, and the fit on clays of known expansion. */
import type { VNode } from "preact";
import { type ExpansionSet, expansionSets } from "../../src/catalogue/mixing/expansion-sets.ts";
import type { CatalogueGlaze, ClayFit } from "../../src/catalogue/types.ts";
import { toUnicodeSubscripts } from "../../src/terms/oxides.ts";
import { Definitions } from "../parts/definitions.tsx";
import { Formula } from "../parts/formula.tsx";
import { clayExpansion, fitWords, perMillion, seenWords } from "../words/chemistry.ts";
import { listed } from "../words/numbers.ts";

interface ExpansionProps {
  readonly root: string;
  readonly glaze: CatalogueGlaze;
}

type Expansions = NonNullable<CatalogueGlaze["chemistry"]>["expansion"];

export function ExpansionAndFit({ root, glaze }: ExpansionProps): VNode | null {
  const expansions = glaze.chemistry?.expansion ?? [];
  if (glaze.kind !== "glaze" || expansions.length === 0) return null;
  return (
    <section class="fit" id="fit">
      <h2>Expansion and fit</h2>
      <div class="columns">
        <div>
          <ExpansionTable expansions={expansions} />
          <p class="quiet">
            Computed from published factors, which were made for other glasses and other
            temperatures: they do not agree, and no mean of them would be nearer the truth. The
            error is what each set misses on eight glasses of known expansion.
          </p>
          <SetsInUse expansions={expansions} />
        </div>
        <div>
          {glaze.fits.map((fit) => (
            <FitOnClay root={root} fit={fit} expansions={expansions} />
          ))}
          <Apart {...{ root, glaze }} />
          {glaze.fits.length > 0 && (
            <p class="quiet">
              Thickness, what the glaze takes from the clay, and the firing all change the fit:
              fired tests on the clay decide, looked at again after weeks.
            </p>
          )}
        </div>
      </div>
    </section>
  );
}

function setOf(model: string): ExpansionSet | undefined {
  return expansionSets.find((set) => set.model === model);
}

function ExpansionTable({ expansions }: { readonly expansions: Expansions }): VNode {
  return (
    <table>
      <caption>Mean linear expansion of the fired glaze, × 10⁻⁶ per kelvin</caption>
      <thead>
        <tr>
          <th scope="col">Factors of</th>
          <th scope="col">Expansion</th>
          <th scope="col">Error</th>
          <th scope="col">°C</th>
        </tr>
      </thead>
      <tbody>
        {expansions.map(({ model, perKelvin, between, outside }) => (
          <tr>
            <th scope="row">
              {setOf(model)?.name}
              {outside.length > 0 && (
                <span class="outside">
                  {" "}
                  does not cover{" "}
                  {outside.map((oxide, i) => (
                    <>
                      {i > 0 && ", "}
                      <Formula of={oxide} />
                    </>
                  ))}
                </span>
              )}
            </th>
            <td>{perMillion(perKelvin)}</td>
            <td>±{perMillion(setOf(model)?.rmsError ?? 0)}</td>
            <td>{between.join("–")}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What each set was made for, those included that could say nothing here. */
function SetsInUse({ expansions }: { readonly expansions: Expansions }): VNode {
  const silent = expansionSets.filter(
    (set) => !expansions.some((expansion) => expansion.model === set.model),
  );
  return (
    <details class="quiet">
      <summary>What each set was made for</summary>
      {silent.length > 0 && (
        <p>
          {listed(silent.map(({ name }) => name))} have no factors for more than a tenth of this
          glaze by weight, so they are left out.
        </p>
      )}
      {expansionSets.map((set) => (
        <p>
          {set.name}: {set.published} factors for each {set.basis}, for{" "}
          {toUnicodeSubscripts(set.limits)}. {set.source}.
        </p>
      ))}
    </details>
  );
}

function FitOnClay(props: {
  readonly root: string;
  readonly fit: ClayFit;
  readonly expansions: Expansions;
}): VNode {
  const { root, fit, expansions } = props;
  const [first, ...others] = fit.fits;
  const range = rangeWords(fit, expansions);
  return (
    <section class="clay-fit">
      <h3>
        On <a href={root + fit.clay.url}>{fit.clay.name}</a>
      </h3>
      <p class="quiet">Measured: {clayExpansion(fit)}.</p>
      <p>
        <b class="tiles-say">The tiles</b> {seenWords(fit)}
      </p>
      {first && <p>{first.message}.</p>}
      <Definitions of={others.map((by) => [setOf(by.model)?.name ?? by.model, fitWords(by)])} />
      {range && <p class="quiet">{range}</p>}
    </section>
  );
}

/** Whether the two numbers were meant for the same temperatures. */
function rangeWords({ between }: ClayFit, expansions: Expansions): string | null {
  if (!between) return "It is not noted between which temperatures the clay was measured.";
  const isAlike = expansions.every((by) => by.between.join() === between.join());
  return isAlike
    ? null
    : "The clay was measured over other temperatures than the factors are meant for, so these numbers compare roughly.";
}

function Apart({ root, glaze: { apart, name } }: ExpansionProps): VNode | null {
  if (apart.length === 0) return null;
  const links = apart.map(({ url, name: clay }, i) => (
    <>
      {i > 0 && (i === apart.length - 1 ? " and " : ", ")}
      <a href={root + url}>{clay}</a>
    </>
  ));
  return (
    <p class="quiet">
      Not compared with {links}: no cone suits both {apart.length === 1 ? "it" : "them"} and {name}.
    </p>
  );
}
