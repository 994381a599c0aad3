/** Thermal expansion by each set of factors, and the fit on clays of known expansion. */
import type { VNode } from "preact";
import type { GlazeTold } from "../../src/catalogue/glazes.ts";
import type { ClayFit } from "../../src/catalogue/mixing/fits.ts";
import { expansionSets } from "../../src/chemistry/expansion/expansion.ts";
import type { ExpansionSet } from "../../src/chemistry/expansion/expansion-set.ts";
import { toUnicodeSubscripts } from "../../src/terms/oxides.ts";
import { Definitions } from "../parts/definitions.tsx";
import { Formula } from "../parts/formula.tsx";
import { count, listed } from "../words/english/numbers.ts";
import {
  clayExpansion,
  contradictionWords,
  fitWords,
  perMillion,
  seenWords,
} from "../words/mixing/chemistry.ts";

interface ExpansionProps {
  readonly root: string;
  readonly glaze: GlazeTold;
}

type Expansions = NonNullable<GlazeTold["chemistry"]>["expansion"];

export function ExpansionAndFit({ root, glaze }: ExpansionProps): VNode | null {
  const expansions = glaze.chemistry?.expansion ?? [];
  if (glaze.kind !== "glaze" || expansions.length === 0) return null;
  const told = fitsToTell(glaze.fits);
  return (
    <section class="fit" id="fit">
      <h2>Expansion and fit</h2>
      <div class="columns">
        <div>
          <ExpansionTable expansions={expansions} />
          <p class="quiet">
            Computed from published factors, which were made for other glasses and other
            temperatures: they do not agree, and averaging them would bring them no nearer the
            truth. No set comes closer than 0.75 on a glaze: twice the error of the best published
            model of glasses (Fluegel), or what a set misses on eight measured glasses where that is
            more. An oxide without a factor adds to it.
          </p>
          <SetsInUse expansions={expansions} />
        </div>
        <div>
          {told.map((fit) => (
            <FitOnClay root={root} fit={fit} expansions={expansions} />
          ))}
          {glaze.fits.length > told.length && (
            <p class="quiet">
              These are {told.length} of {count(glaze.fits.length, "clay")}: those whose tiles
              contradict the figures first, then those with most tiles.
            </p>
          )}
          <Apart {...{ root, glaze }} />
          {glaze.fits.length > 0 && (
            <p class="quiet">
              Thickness, what the glaze takes from the clay, and the firing all change the fit:
              trust fired tests on the clay, looked at again some weeks later.
            </p>
          )}
        </div>
      </div>
    </section>
  );
}

/** So many clays at most; what contradicts the figures is never left out for what does not. */
const claysTold = 4;

function fitsToTell(fits: readonly ClayFit[]): readonly ClayFit[] {
  const doubted = fits.filter((fit) => contradictionWords(fit));
  const others = fits.filter((fit) => !doubted.includes(fit));
  const told = new Set([...doubted, ...others].slice(0, claysTold));
  return fits.filter((fit) => told.has(fit));
}

function setOf(model: string): ExpansionSet | undefined {
  return expansionSets.find((set) => set.model === model);
}

interface Witness extends Omit<Expansions[number], "outside"> {
  readonly name: string;
  /** The larger figure of sets that share their factors. */
  readonly high: number | null;
  readonly outside: Expansions[number]["outside"];
}

/** Sets that share their factors as one, with the smaller figure first. */
function asWitnesses(expansions: Expansions): readonly Witness[] {
  const heads = expansions.filter(({ model }) => setOf(model)?.takenFrom === undefined);
  return heads.map((head) => {
    const family = expansions.filter(
      ({ model }) => model === head.model || setOf(model)?.takenFrom === head.model,
    );
    const known = family.filter(({ perKelvin }) => perKelvin !== null);
    const figures = known.flatMap(({ perKelvin }) => perKelvin ?? []);
    return {
      ...(known[0] ?? head),
      name: listed(family.map(({ model }) => setOf(model)?.name ?? model)),
      perKelvin: figures.length > 0 ? Math.min(...figures) : null,
      high: figures.length > 0 ? Math.max(...figures) : null,
      doubt: known.length > 0 ? Math.max(...known.map(({ doubt }) => doubt ?? 0)) : null,
    };
  });
}

function figureWords(low: number, high: number | null): string {
  const [from, to] = [perMillion(low), perMillion(high ?? low)];
  return from === to ? from : `${from} to ${to}`;
}

function ExpansionTable({ expansions }: { readonly expansions: Expansions }): VNode {
  return (
    <table>
      <caption>Mean linear expansion of the fired glaze, × 10⁻⁶ per kelvin</caption>
      <thead>
        <tr>
          <th scope="col">Factors of</th>
          <th scope="col">Expansion</th>
          <th scope="col">May be off by</th>
          <th scope="col">°C</th>
        </tr>
      </thead>
      <tbody>
        {asWitnesses(expansions).map(
          ({ model, name, high, perKelvin, doubt, between, outside }) => (
            <tr key={model}>
              <th scope="row">
                {name}
                {outside.length > 0 && (
                  <span class="outside">
                    {" "}
                    not covered:{" "}
                    {outside.map((oxide, i) => (
                      <>
                        {i > 0 && ", "}
                        <Formula of={oxide} />
                      </>
                    ))}
                  </span>
                )}
              </th>
              <td>{perKelvin === null ? "no figure" : figureWords(perKelvin, high)}</td>
              <td>{doubt === null ? "" : `±${perMillion(doubt)}`}</td>
              <td>{between.join("–")}</td>
            </tr>
          ),
        )}
      </tbody>
    </table>
  );
}

/** What each set was made for, those included that could say nothing here. */
function SetsInUse({ expansions }: { readonly expansions: Expansions }): VNode {
  const silent = expansions.filter(({ perKelvin }) => perKelvin === null);
  return (
    <details class="quiet">
      <summary>What each set was made for</summary>
      {silent.length > 0 && (
        <p>
          No figure from {listed(silent.map(({ model }) => setOf(model)?.name ?? model))}: this
          glaze holds more boron or lithia than the factors were made for, or more than a tenth of
          it by weight has no factor.
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
      {contradictionWords(fit) && <p>{contradictionWords(fit)}</p>}
      {first && <p>{first.message}.</p>}
      <Definitions of={others.map((by) => [by.by, fitWords(by)])} />
      {range && <p class="quiet">{range}</p>}
    </section>
  );
}

/** Whether the two numbers were meant for the same temperatures. */
function rangeWords({ between }: ClayFit, expansions: Expansions): string | null {
  if (!between) return "The temperatures between which the clay was measured are not recorded.";
  const isAlike = expansions.every((by) => by.between.join() === between.join());
  return isAlike
    ? null
    : "The clay was measured over other temperatures than the factors are for, so these numbers only compare roughly.";
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
      Not compared with {links}: {apart.length === 1 ? "it has" : "they have"} no cone in common
      with {name}.
    </p>
  );
}
