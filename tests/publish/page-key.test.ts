import { fc, test as property } from "@fast-check/vitest";
import { h } from "preact";
import { describe, expect, test } from "vitest";
import { freezeAll } from "../../src/catalogue/freeze.ts";
import type { Page } from "../../src/publish/page.ts";
import { keyOfPage } from "../../src/publish/page-key.ts";

function pageWith(props: object, component = Plain): Page {
  return { path: "a.html", component, props: () => props, search: null };
}

function Plain() {
  return h("p", null);
}

function Other() {
  return h("p", null);
}

const keyOf = (props: object) => keyOfPage(pageWith(props), "code");

const plain = fc.object({
  withNullPrototype: false,
  values: [fc.string(), fc.double(), fc.boolean(), fc.constant(null), fc.constant(undefined)],
});

describe("the key of a page", () => {
  property.prop([plain])("is the same for equal props, frozen or not", (props) => {
    const copy = structuredClone(props);
    expect(keyOf({ props })).toBe(keyOf({ props: copy }));
    const frozen = freezeAll(structuredClone(props));
    const again = freezeAll(structuredClone(props));
    expect(keyOf({ frozen })).toBe(keyOf({ frozen: again }));
  });

  property.prop([plain, fc.string(), fc.anything()])(
    "is another for other props, however deep the difference lies",
    (props, name, value) => {
      fc.pre(typeof value !== "object" && typeof value !== "function");
      const changed = { ...props, [name]: [value, "changed"] };
      expect(keyOf({ list: [changed] })).not.toBe(keyOf({ list: [props] }));
      const [one, two] = [props, changed].map((each) => freezeAll(structuredClone(each)));
      expect(keyOf({ list: [one] })).not.toBe(keyOf({ list: [two] }));
    },
  );

  test.each([
    [{ a: "1" }, { a: 1 }],
    [{ a: "null" }, { a: null }],
    [{ a: undefined }, { a: "undefined" }],
    [{ a: 0 }, { a: -0 }],
    [{ a: ["b", "c"] }, { a: ["b,c"] }],
    [{ a: [["b"], "c"] }, { a: ["b", ["c"]] }],
    [{ a: "1", b: "2" }, { a: '1","b":"2' }],
  ])("tells %o from %o", (one, other) => {
    expect(keyOf(one)).not.toBe(keyOf(other));
  });

  test("is another for another component, and for other code", () => {
    const key = keyOfPage(pageWith({}), "code");
    expect(keyOfPage(pageWith({}, Other), "code")).not.toBe(key);
    expect(keyOfPage(pageWith({}), "other code")).not.toBe(key);
  });

  test("tells apart what frozen lists and maps hold", () => {
    const key = (value: object) => keyOf({ value: freezeAll(value) });
    expect(key(new Map([["a", 1]]))).not.toBe(key(new Map([["a", 2]])));
    expect(key([{ bends: new Map([["a", "bent"]]) }])).not.toBe(
      key([{ bends: new Map([["a", "down"]]) }]),
    );
    expect(key([1, 2])).not.toBe(key([1, 3]));
    expect(key([0, undefined])).not.toBe(key([0, null]));
    expect(key([0])).not.toBe(key([-0]));
    expect(key([Number.NaN])).not.toBe(key([null]));
  });

  test("does not depend on how the machine holds a number or a text", () => {
    const [one, half] = [1, 0.5];
    const sliced = "ж plain words follow".slice(2);
    const key = (value: object) => keyOf({ value: Object.freeze(value) });
    expect(key([half + half, sliced])).toBe(key([one, "plain words follow"]));
  });

  test.each([
    ["a function", { make: () => 1 }, "it holds a function"],
    ["a set", { set: new Set() }, "it holds a Set"],
    ["a day", { list: [new Date(0)] }, "it holds a Date"],
    ["a sign", { sign: Symbol("a") }, "it holds a symbol"],
  ])("is refused for props with %s, which could change without notice", (_, props, told) => {
    expect(() => keyOf(props)).toThrow(`No key can be made of the page a.html: ${told}`);
  });

  test("is refused for a function among frozen props as well", () => {
    const props = freezeAll({ tile: { make: () => 1 } });
    expect(() => keyOf(props)).toThrow("No key can be made of the page a.html: ");
  });
});
