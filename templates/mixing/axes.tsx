/** The axes of everything that is drawn by silica and alumina. */
import type { VNode } from "preact";
import type { Plot } from "./silica-plot.ts";

/** Nobody is read these: the marks and the table say the same. */
export const unread = { "aria-hidden": true } as const;

export function Axes({ plotted }: { readonly plotted: Plot }): VNode {
  const { silica, alumina, frame } = plotted;
  const { plot } = frame;
  return (
    <g class="axes" {...unread}>
      <path d={`M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`} />
      {silica.map(({ at, words }) => (
        <text x={at.toFixed(1)} y={plot.bottom + 22} text-anchor="middle">
          {words}
        </text>
      ))}
      {alumina.map(({ at, words }) => (
        <text x={plot.left - 8} y={(at + 5).toFixed(1)} text-anchor="end">
          {words}
        </text>
      ))}
      <text x={plot.right} y={plot.bottom + 46} text-anchor="end">
        silica, moles to one of flux
      </text>
      <text x={plot.left + 8} y={plot.top + 14}>
        alumina
      </text>
    </g>
  );
}

/** A drawing with links in it is a group to those who hear it. */
export const asGroup = { role: "group" } as const;
