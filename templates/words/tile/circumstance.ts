/** What was glazed and how it was fired, in words: the heading over tiles that have it in common. */
import type { Circumstance } from "../../../src/catalogue/circumstance.ts";
import type { Cooling } from "../../../src/firing/cooling.ts";
import { article, count } from "../english/numbers.ts";
import { pieceName } from "./outcome.ts";

/** `Cone 6, oxidation, Buff stoneware, an L-shaped tile` */
export function circumstanceHeading(circumstance: Circumstance): string {
  const { cone, atmosphere, fire, firings, clay } = circumstance;
  const fired =
    firings === 0
      ? ["Not fired yet"]
      : [
          cone === null ? "Cone not recorded" : `Cone ${cone}`,
          atmosphere ?? "atmosphere not recorded",
          fire && fireNames[fire],
        ];
  const told = [...fired, clay?.name ?? "clay not recorded", testPiece(circumstance)];
  return told.filter(Boolean).join(", ");
}

const fireNames = {
  pit: "pit fired",
  raku: "raku",
  saggar: "saggar fired",
  salt: "salt fired",
  soda: "soda fired",
  wood: "wood fired",
} as const;

/** `an L-shaped tile`, `an upright tile at 80°`: what somebody tests on, and how steep it stands. */
export function testPiece({ shape, angle }: Pick<Circumstance, "angle" | "shape">): string {
  const name = pieceName(shape);
  const piece = `${article(name).toLowerCase()} ${name}`;
  return angle === null ? piece : `${piece} at ${angle}°`;
}

const coolings: Readonly<Record<Cooling, string>> = {
  natural: "left to cool",
  slowed: "cooled slowly",
  unknown: "how it cooled is not recorded",
};

/** `left to cool`, `glaze fired 2 times, cooled slowly`; nothing before it is fired. */
export function firedWords({ cooling, firings }: Circumstance): string {
  if (firings === 0) return "";
  const times = firings > 1 && `glaze fired ${count(firings, "time")}`;
  return [times, coolings[cooling]].filter(Boolean).join(", ");
}
