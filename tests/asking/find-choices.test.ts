import { fc, test } from "@fast-check/vitest";
import { expect } from "vitest";
import { findChoices } from "../../src/asking/find-choices.ts";

const glazes = [
  { value: "17", label: "17: Rust" },
  { value: "7", label: "7: Tidewrack" },
  { value: "half-tide", label: "half-tide: Half tide" },
  { value: "tidewrack", label: "tidewrack: Tidewrack", also: ["Oxbow"] },
  { value: "soot", label: "soot: Soot" },
];

test.each([
  ["7", ["7", "17"]],
  ["TIDE", ["tidewrack", "7", "half-tide"]],
  ["oxbow", ["tidewrack"]],
  ["  soot ", ["soot"]],
  ["half ti", ["half-tide"]],
  ["", ["17", "7", "half-tide", "tidewrack", "soot"]],
  ["nothing such", []],
])("“%s” finds the nearest first: %j", (typed, found) => {
  expect(findChoices(glazes, typed).map(({ value }) => value)).toEqual(found);
});

test.prop([
  fc.array(fc.string({ minLength: 1, maxLength: 4, unit: fc.constantFrom(..."abAB7é") })),
  fc.nat(),
])(
  "whatever is called exactly as it is typed comes before all that is not, in any case",
  (words, at) => {
    fc.pre(words.length > 0);
    const typed = words[at % words.length] ?? "";
    fc.pre(/^[\p{L}\p{N}]+$/u.test(typed));
    const choices = words.map((value) => ({ value, label: `${value}: x` }));
    const [first] = findChoices(choices, typed.toLowerCase());
    expect(first?.value.normalize("NFC").toLowerCase()).toBe(typed.normalize("NFC").toLowerCase());
  },
);
