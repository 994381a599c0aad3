import { fc, test as property } from "@fast-check/vitest";
import { expect, test, vi } from "vitest";
import { addTo, indexBy } from "../../src/terms/index-by.ts";
import { remember, rememberFor } from "../../src/terms/remember.ts";

property.prop([fc.array(fc.string({ maxLength: 2 })), fc.integer({ min: 1, max: 5 })])(
  "what is remembered is what would be found again, however little is kept",
  (asked, most) => {
    const lengthOf = remember(
      most,
      (text: string) => [text.length],
      (text) => text,
    );
    expect(asked.map(lengthOf)).toEqual(asked.map((text) => [text.length]));
  },
);

test("a thing is looked for once, and again when more was asked for than is kept", () => {
  const find = vi.fn((text: string) => text.toUpperCase());
  const remembering = remember(2, find, (text) => text);
  for (const text of ["a", "b", "a", "b"]) remembering(text);
  expect(find.mock.calls.flat()).toEqual(["a", "b"]);
  for (const text of ["c", "a"]) remembering(text);
  expect(find.mock.calls.flat()).toEqual(["a", "b", "c", "a"]);
});

test("nothing found is remembered as well", () => {
  const find = vi.fn(() => undefined);
  const remembering = remember(2, find, String);
  remembering("a");
  remembering("a");
  expect(find).toHaveBeenCalledTimes(1);
});

test("of each object it is remembered by itself, however alike two are", () => {
  const find = vi.fn((list: readonly number[]) => list.length);
  const remembering = rememberFor(find);
  const [one, other] = [[1], [1]];
  expect([one, other, one].map(remembering)).toEqual([1, 1, 1]);
  expect(find).toHaveBeenCalledTimes(2);
});

property.prop([fc.array(fc.array(fc.constantFrom("a", "b", "c"), { maxLength: 4 }))])(
  "an index finds under each key what looking through all would, in the same order",
  (list) => {
    const index = indexBy(list, (keys) => keys);
    for (const key of ["a", "b", "c"])
      expect(index.get(key) ?? []).toEqual(list.filter((keys) => keys.some((own) => own === key)));
  },
);

test("what is added comes last", () => {
  const lists = new Map<string, number[]>();
  addTo(lists, "a", 1);
  addTo(lists, "a", 2);
  addTo(lists, "b", 3);
  expect([...lists]).toEqual([
    ["a", [1, 2]],
    ["b", [3]],
  ]);
});
