/** The curves of a firing as a table, hour by hour, for whoever cannot see them. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import type { Curve } from "../../src/firing/curve.ts";
import type { TemperatureUnit } from "../../src/firing/units.ts";
import { temperatureInWords } from "../words/firing/degrees.ts";
import { celsiusAt } from "./curve-shape.ts";

/** The most rows: an hour each, or two, or as many as it takes. */
const mostRows = 26;

export function CurveTable(props: {
  readonly firing: Pick<CatalogueFiring, "programme" | "log">;
  readonly unit: TemperatureUnit;
}): VNode {
  const { firing, unit } = props;
  const curves = (
    [
      ["Programme", firing.programme?.curve],
      ["Log", firing.log?.curve],
    ] as const
  ).filter((entry): entry is ["Programme" | "Log", Curve] => (entry[1]?.length ?? 0) > 1);
  return (
    <details class="as-table">
      <summary>The curve as a table</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Hours</th>
            {curves.map(([name]) => (
              <th scope="col">{name}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {hoursOf(curves.map(([, curve]) => curve)).map((hour) => (
            <tr>
              <th scope="row">{hour}</th>
              {curves.map(([, curve]) => (
                <td>{told(celsiusAt(curve, hour * 60), unit)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function hoursOf(curves: readonly Curve[]): readonly number[] {
  const hours = Math.max(...curves.map((curve) => (curve.at(-1)?.minutes ?? 0) / 60));
  const step = Math.max(1, Math.ceil(hours / (mostRows - 1)));
  return Array.from({ length: Math.floor(hours / step) + 1 }, (_, i) => i * step);
}

function told(celsius: number | undefined, unit: TemperatureUnit): string {
  return celsius === undefined ? "" : temperatureInWords(celsius, unit);
}
