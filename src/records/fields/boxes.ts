/** Fields that hold a part of a picture. */
import * as z from "zod";
import { list } from "./containers.ts";
import { oneForm } from "./forms.ts";
import { number } from "./numbers.ts";
import { scalar } from "./scalar.ts";

/** The left, top, right and bottom edge of a part of a picture, in per cent. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A part of a picture: left, top, right and bottom edge, in per cent. */
export const box = () =>
  list(number("percentage", { from: 0, to: 100 })).transform((edges, context): Box => {
    const [left = 0, top = 0, right = 0, bottom = 0] = edges;
    if (edges.length === 4 && left < right && top < bottom) return { left, top, right, bottom };
    context.addIssue({
      code: "custom",
      message:
        "A part of a picture is four numbers, the right edge beyond the left and the bottom below the top\nWrite left, top, right and bottom in per cent, as in [8, 8, 92, 92]; between brackets, decimals need a point: 8.5.",
      params: { code: "bad-box" },
    });
    return z.NEVER;
  });

/** A part of a picture, or `no` where there is no such part. */
export const boxOrNo = () => {
  const [part, no] = [box(), noWord()];
  return oneForm<Box | false>([part, no], (input) => (typeof input === "string" ? no : part));
};

const noWord = () =>
  scalar<false>(
    (found) =>
      /^(no|false)$/iu.test(found)
        ? { value: false }
        : {
            code: "bad-box",
            message: `“${found}” does not name a part of a picture`,
            hint: "Write left, top, right and bottom in per cent, as in [2, 2, 6, 6], or no where there is none.",
          },
    { anyOf: [{ const: "no" }, { const: false }] },
  );
