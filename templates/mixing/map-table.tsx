/** The figures of a map. */
import type { VNode } from "preact";
import { Formula } from "../parts/formula.tsx";
import { listed, spoken } from "../words/english/numbers.ts";
import { formatMoles } from "../words/mixing/chemistry.ts";
import { regionWords } from "../words/mixing/second-opinion.ts";
import type { GlazeMapProps, ShownMark } from "./glaze-map.tsx";

/** The same for those who cannot see it, and for exact figures. */
export function MapTable({ root, marks }: GlazeMapProps): VNode {
  return (
    <table class="map-table">
      <thead>
        <tr>
          <th scope="col">Glaze</th>
          <th scope="col">
            <Formula of="SiO2" />
          </th>
          <th scope="col">
            <Formula of="Al2O3" />
          </th>
          <th scope="col">Ratio</th>
          <th scope="col">Surface</th>
          <th scope="col" class="old-lines">
            By the old lines
          </th>
        </tr>
      </thead>
      <tbody>
        {marks.map((shown) => (
          <MapRow root={root} shown={shown} />
        ))}
      </tbody>
    </table>
  );
}

function MapRow({ root, shown }: { readonly root: string; readonly shown: ShownMark }): VNode {
  const { glaze, silica, alumina, surface, region, disagrees, loud } = shown;
  return (
    <tr>
      <th scope="row">
        <a href={root + glaze.url}>{glaze.name}</a>
        {loud && <span class="loud-words"> {loud}</span>}
      </th>
      <td>{formatMoles(silica)}</td>
      <td>{formatMoles(alumina)}</td>
      <td>{alumina > 0 ? (silica / alumina).toFixed(1) : "–"}</td>
      <td>{listed(surface.map(spoken)) || "–"}</td>
      <td class="old-lines">
        {region ? regionWords[region] : "–"}
        {disagrees && <b>, not so here</b>}
      </td>
    </tr>
  );
}
