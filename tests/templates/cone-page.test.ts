import { expect, test } from "vitest";
import { coneSentence } from "../../templates/pages/cone-page.tsx";
import { cone } from "../checks/support.ts";

const six = cone("6");

test("a tile that waits for its firing is not counted as fired", () => {
  expect(coneSentence(six, null, { fired: 116, waiting: 2 })).toBe(
    "116 tiles fired to cone 6, by the witness cone on their own shelf where one was set; 2 still to be fired.",
  );
  expect(coneSentence(six, null, { fired: 0, waiting: 1 })).toBe("1 tile to be fired to cone 6.");
});

test("where none waits, nothing is said of waiting", () => {
  expect(coneSentence(six, "satin", { fired: 1, waiting: 0 })).toBe(
    "1 satin tile fired to cone 6, by the witness cone on its own shelf where one was set.",
  );
});
