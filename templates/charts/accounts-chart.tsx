/** What is said of one firing, side by side on the line of cones: a row for each account. */
import type { VNode } from "preact";
import type { FiringAccount } from "../../src/catalogue/kilns/story.ts";
import { accountWords } from "../words/firing/cones.ts";
import { accountName } from "../words/firing/story.ts";
import { type ConeLine, coneLine } from "./cone-line.ts";

export function AccountsChart({
  accounts,
}: {
  readonly accounts: readonly FiringAccount[];
}): VNode | null {
  const line = coneLine(accounts);
  if (!line || accounts.length < 2) return null;
  return (
    <ol class="accounts">
      <li class="axis" aria-hidden="true">
        <span />
        <svg aria-hidden="true" height="24">
          {line.cones.map(({ x, cone, named }) =>
            named ? (
              <text x={perCent(x)} y="16" text-anchor="middle">
                {cone}
              </text>
            ) : null,
          )}
        </svg>
      </li>
      {accounts.map((account) => (
        <li>
          <span class="who">
            {accountName(account)} <span class="said">{accountWords(account)}</span>
          </span>
          <svg aria-hidden="true" height={rowHeight}>
            <Ground line={line} />
            <Mark account={account} line={line} />
          </svg>
        </li>
      ))}
    </ol>
  );
}

const rowHeight = 48;
const middle = rowHeight / 2;

/** The band within a cone of the aim, a hairline at each cone, the aim itself. */
function Ground({ line: { aim, band, cones } }: { readonly line: ConeLine }): VNode {
  return (
    <>
      {band && (
        <rect class="band" x={perCent(band.x)} width={perCent(band.width)} height={rowHeight} />
      )}
      {cones.map(({ x }) => (
        <line class="hair" x1={perCent(x)} x2={perCent(x)} y2={rowHeight} />
      ))}
      {aim !== null && <line class="aim" x1={perCent(aim)} x2={perCent(aim)} y2={rowHeight} />}
    </>
  );
}

function Mark(props: { readonly account: FiringAccount; readonly line: ConeLine }): VNode {
  const { account, line } = props;
  const { of, low, high, modelled } = account;
  const [from, to] = [line.clamp(low), line.clamp(high)];
  const points = (modelled === null ? [low, high] : [modelled]).filter(Number.isFinite);
  return (
    <>
      <line class="reach" x1={perCent(from)} x2={perCent(to)} y1={middle} y2={middle} />
      {!Number.isFinite(low) && <Arrow x={from} way="left" />}
      {!Number.isFinite(high) && <Arrow x={to} way="right" />}
      {[...new Set(points)].map((place) => (
        <Point of={of} x={line.clamp(place)} />
      ))}
    </>
  );
}

function Point({ of, x }: { readonly of: FiringAccount["of"]; readonly x: number }): VNode {
  if (of === "aim")
    return (
      <rect class="point" x={perCent(x)} y="8" width="3" height="32" transform="translate(-1.5)" />
    );
  if (of === "shelf")
    return (
      <rect
        class="point"
        x={perCent(x)}
        y={middle - 5}
        width="10"
        height="10"
        transform="translate(-5)"
      />
    );
  return <circle class={of === "log" ? "point" : "ring"} cx={perCent(x)} cy={middle} r="5.5" />;
}

function Arrow({ x, way }: { readonly x: number; readonly way: "left" | "right" }): VNode {
  return (
    <svg aria-hidden="true" x={perCent(x)} y={middle} overflow="visible">
      <path class="point" d={way === "left" ? "M0 0l8 -5v10z" : "M0 0l-8 -5v10z"} />
    </svg>
  );
}

function perCent(x: number): string {
  return `${x.toFixed(2)}%`;
}
