/** What there is to know of two tiles that are compared, as data. */
import type { Beside } from "../../catalogue/apart.ts";
import { rounded } from "./numbers.ts";

/** The colour difference to a hundredth; what neither says stands among what was not held equal. */
export function toBeside({ deltaE00, uncontrolled, unknown }: Beside) {
  return {
    deltaE00: deltaE00 === null ? null : rounded(deltaE00, 2),
    uncontrolled: [...uncontrolled, ...unknown.map((aspect) => `${aspect} unknown`)],
  };
}
