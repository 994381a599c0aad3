/** A mixed glaze's chemistry, as it was worked out from its materials. */
import type { VNode } from "preact";
import type { GlazeTold } from "../../src/catalogue/glazes.ts";
import { presentOxides } from "../../src/terms/oxides.ts";
import { asPerCent, formatMoles } from "../words/mixing/chemistry.ts";
import { Definitions } from "./definitions.tsx";
import { Formula } from "./formula.tsx";

export function Chemistry({ glaze }: { readonly glaze: GlazeTold }): VNode | null {
  const { chemistry, whyNoChemistry } = glaze;
  if (!chemistry)
    return whyNoChemistry ? (
      <section>
        <h2>Chemistry</h2>
        <p>None: {whyNoChemistry}</p>
      </section>
    ) : null;
  const { unity, weightPercent, molePercent } = chemistry;
  return (
    <section class="chemistry">
      <h2>Chemistry, fired</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Oxide</th>
            <th scope="col">Unity, moles</th>
            <th scope="col">Weight %</th>
            <th scope="col">Mole %</th>
          </tr>
        </thead>
        <tbody>
          {presentOxides(weightPercent).map(([oxide, weight]) => (
            <tr>
              <th scope="row">
                <Formula of={oxide} />
              </th>
              <td>{unity ? formatMoles(unity[oxide] ?? 0) : ""}</td>
              <td>{asPerCent(weight)}</td>
              <td>{asPerCent(molePercent[oxide] ?? 0)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Totals glaze={glaze} />
      {chemistry.notes.map(({ message }) => (
        <p class="quiet">{message}.</p>
      ))}
      <p class="quiet">
        Worked out from what the materials are said to hold. No formula settles what a glaze gives
        off to food; a laboratory test does.
      </p>
    </section>
  );
}

function Totals({ glaze: { chemistry } }: { readonly glaze: GlazeTold }): VNode | null {
  if (!chemistry) return null;
  return (
    <Definitions
      of={[
        ["Silica to alumina, by moles", figures(chemistry.silicaToAlumina ?? undefined, 1)],
        ["Alkalis among the fluxes, by moles", share(chemistry.alkaliShare)],
        ["Lost in firing, of the raw weight", `${figures(chemistry.lossOnIgnition, 1)} %`],
      ]}
    />
  );
}

function share(part: number | null): string {
  return part === null ? "" : `${(part * 100).toFixed(0)} %`;
}

function figures(value: number | undefined, places: number): string {
  return value === undefined ? "" : value.toFixed(places).replace("-", "−");
}
