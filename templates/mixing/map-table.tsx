/** The figures of a map, in the order of its numbers. */
import type { VNode } from "preact";
import { Formula } from "../parts/formula.tsx";
import { listed, spoken } from "../words/english/numbers.ts";
import { formatMoles } from "../words/mixing/chemistry.ts";
import { ratioWords } from "../words/mixing/map.ts";
import { regionWords } from "../words/mixing/second-opinion.ts";
import type { NumberedMark } from "./ratio-map.tsx";

interface MapTableProps {
  readonly root: string;
  readonly marks: readonly NumberedMark[];
}

/** The same for those who cannot see it, and for exact figures. */
export function MapTable({ root, marks }: MapTableProps): VNode {
  return (
    <table class="map-table">
      <thead>
        <tr>
          <th scope="col">Glaze</th>
          <th scope="col">Ratio</th>
          <th scope="col">Glass</th>
          <th scope="col">
            <Formula of="SiO2" />
          </th>
          <th scope="col">
            <Formula of="Al2O3" />
          </th>
          <th scope="col">Surface here</th>
          <th scope="col">By the lines</th>
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

function MapRow({ root, shown }: { readonly root: string; readonly shown: NumberedMark }): VNode {
  const { number, glaze, ratio, glass, silica, alumina, surface, region, loud } = shown;
  return (
    <tr>
      <th scope="row">
        <span class="number">{number}</span> <a href={root + glaze.url}>{glaze.name}</a>
        {shown.isIncomplete && <span class="quiet"> analysis incomplete</span>}
        {loud && <span class="loud-words"> {loud}</span>}
      </th>
      <td>{ratioWords(ratio)}</td>
      <td>{formatMoles(glass)}</td>
      <td>{formatMoles(silica)}</td>
      <td>{formatMoles(alumina)}</td>
      <td>{listed(surface.map(spoken)) || "–"}</td>
      <td>
        {region ? regionWords[region] : "–"}
        {shown.disagrees && <b>, not so here</b>}
      </td>
    </tr>
  );
}
