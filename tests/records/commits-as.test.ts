import { expect, test } from "vitest";
import { readAs } from "../../src/records/read.ts";
import { studioSchema } from "../../src/records/studio.ts";

const read = (name: string | readonly string[]) =>
  readAs(studioSchema, {
    format: "1",
    studio: "Weir Lane",
    makers: { m01: { name: "Rowan K.", "commits-as": name } },
  });

test("a maker commits under one name or several", () => {
  for (const [written, meant] of [
    ["rowan", ["rowan"]],
    [
      ["rowan", "R. K."],
      ["rowan", "R. K."],
    ],
  ] as const)
    expect(read(written)).toMatchObject({
      record: { makers: { m01: { commitsAs: meant } } },
    });
});

test("a mail address is no name to commit under", () => {
  expect(read("Rowan <rowan@example.org>")).toEqual({
    ok: false,
    faults: [
      {
        path: ["makers", "m01", "commits-as", 0],
        code: "mail-address",
        message: "“Rowan <rowan@example.org>” is a mail address, or holds one",
        hint: "Write the name alone, as “git log” shows it before the address.",
      },
    ],
  });
});
