/** Where on a tile: touched on its outline, or ticked in a list, which says the same. */
import type { VNode } from "preact";
import { whereWords } from "../../../templates/words/tile/steps.ts";
import { type Area, areas } from "../../terms/choices.ts";

/** Places that an outline can show: each a shape of a tile 320 points wide. The rim is the outermost. */
const zones: readonly (readonly [area: Area, path: string, middle: number])[] = [
  ["rim", "M0 0H320V320H0ZM48 48V272H272V48Z", 24],
  ["top", "M48 48H272V112H48Z", 80],
  ["left", "M48 112H112V208H48Z", 160],
  ["centre", "M112 112H208V208H112Z", 160],
  ["right", "M208 112H272V208H208Z", 160],
  ["bottom", "M48 208H272V272H48Z", 240],
];

/** How far right of the left edge a name is. */
const across: Partial<Record<Area, number>> = { left: 80, right: 240 };

export function AreasField(props: {
  readonly where: readonly Area[];
  readonly put: (where: readonly Area[]) => void;
  readonly open: boolean;
}): VNode {
  const { where, put } = props;
  const toggle = (area: Area) =>
    put(where.includes(area) ? where.filter((each) => each !== area) : [...where, area]);
  return (
    <details class="form-where" open={props.open || where.length > 0}>
      <summary>{`Where: ${whereWords(where.length > 0 ? where : ["all"]) || "all over"}`}</summary>
      <svg viewBox="0 0 320 320" class="tile-outline" aria-hidden="true">
        {zones.map(([area, path, middle]) => (
          <g key={area}>
            {/* biome-ignore lint/a11y/noStaticElementInteractions: the boxes below do the same by keyboard */}
            <path
              d={path}
              fill-rule="evenodd"
              class={where.includes(area) ? "chosen" : ""}
              data-area={area}
              onClick={() => toggle(area)}
            />
            <text x={across[area] ?? 160} y={middle + 5}>
              {area}
            </text>
          </g>
        ))}
      </svg>
      <fieldset class="form-choice">
        <legend>Where</legend>
        {areas
          .filter((area) => area !== "all")
          .map((area) => (
            <label key={area} class="form-tick">
              <input type="checkbox" checked={where.includes(area)} onChange={() => toggle(area)} />
              {area}
            </label>
          ))}
      </fieldset>
    </details>
  );
}
