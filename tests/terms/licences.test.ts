/**
 * What a studio's `licence:` means, held to the SPDX licence list 3.28.0 of 2026-02-20, as the package
 * spdx-license-list 6.12.0 carries it.
 */
import { createRequire } from "node:module";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isLicenceUnread, readLicence } from "../../src/terms/licences.ts";

const listed = createRequire(import.meta.url)("spdx-license-list") as Readonly<
  Record<string, { readonly name: string; readonly url: string }>
>;

const letters = ["BY", "BY-NC", "BY-NC-ND", "BY-NC-SA", "BY-ND", "BY-SA"];
const ids = [
  ...["2.0", "2.5", "3.0", "4.0"].flatMap((version) => letters.map((by) => `CC-${by}-${version}`)),
  ...["CC0-1.0", "ODbL-1.0", "ODC-By-1.0", "PDDL-1.0"],
];
const licences = ids.flatMap((id) => readLicence(id) ?? []);

describe("licences", () => {
  it("are found by each of these ids", () => {
    expect(licences.map(({ id }) => id)).toEqual(ids);
  });

  it.each(licences)("$id has its name of the SPDX list", ({ id, name }) => {
    expect(name).toBe(listed[id]?.name);
  });

  // The list leads to the whole text, by addresses that lead on from http:, www. and 1.0.
  it.each(licences)("$id has the address of the SPDX list", ({ id, address }) => {
    const there = listed[id]?.url
      .replace(/^http:\/\/(?:www\.)?/u, "https://")
      .replace(/(opendatacommons\.org\/.*)1\.0/u, "$11-0")
      .replace(/legalcode$/u, "");
    expect(address).toBe(there);
  });

  it.each(["CC0", "ODbL", "ODC-By", "PDDL"])("%s has one version in the SPDX list", (short) => {
    expect(Object.keys(listed).filter((id) => id.startsWith(`${short}-`))).toHaveLength(1);
  });
});

describe("readLicence", () => {
  it.each([
    ...["CC BY 4.0", "CC-BY-4.0", "cc-by 4.0", "CC BY 4.0.", "CC BY v4.0", "CCBY4.0"],
    ...["Creative Commons Attribution 4.0", "Creative Commons Attribution 4.0 International"],
    ...["CC BY 4.0 International", "Creative Commons BY 4.0", "Attribution 4.0 International"],
    "Creative Commons Attribution 4.0 International Public License",
    "Creative Commons Attribution 4.0 licence",
    "Creative Commons Attribution Licence 4.0",
    "Creative Commons Attribution 4.0 International (CC BY 4.0)",
    ...["https://creativecommons.org/licenses/by/4.0/", "creativecommons.org/licenses/by/4.0"],
    "http://www.creativecommons.org/licenses/by/4.0/legalcode",
    "https://creativecommons.org/licenses/by/4.0/deed.en",
    ...["CC BY 4.0 https://creativecommons.org/licenses/by/4.0/"],
    ...[
      "CC BY 4.0 (creativecommons.org/licenses/by/4.0)",
      "CC BY 4.0: <https://creativecommons.org/licenses/by/4.0/>",
    ],
    "[CC BY 4.0](https://creativecommons.org/licenses/by/4.0/)",
    "CC\u00a0BY\u20114.0",
  ])("“%s” is CC BY 4.0", (words) => {
    expect(readLicence(words)).toEqual({
      id: "CC-BY-4.0",
      name: "Creative Commons Attribution 4.0 International",
      address: "https://creativecommons.org/licenses/by/4.0/",
    });
  });

  it.each([
    ["CC BY-SA 4.0", "CC-BY-SA-4.0"],
    ["CC BY SA 4.0", "CC-BY-SA-4.0"],
    ["Creative Commons Attribution-ShareAlike 4.0 International License", "CC-BY-SA-4.0"],
    ["Creative Commons Attribution-NonCommercial 4.0", "CC-BY-NC-4.0"],
    ["Attribution-NonCommercial-NoDerivatives 4.0 International", "CC-BY-NC-ND-4.0"],
    ["CC BY-NC-SA 3.0 Unported", "CC-BY-NC-SA-3.0"],
    ["CC BY 2.5", "CC-BY-2.5"],
    ["CC0", "CC0-1.0"],
    ["CC0 1.0 Universal", "CC0-1.0"],
    ["Creative Commons Zero", "CC0-1.0"],
    ["https://creativecommons.org/publicdomain/zero/1.0/", "CC0-1.0"],
    ["ODbL", "ODbL-1.0"],
    ["Open Database License (ODbL) v1.0", undefined],
    ["Open Database License 1.0 (ODbL)", "ODbL-1.0"],
    ["Open Data Commons Attribution License", "ODC-By-1.0"],
    ["https://opendatacommons.org/licenses/pddl/1.0/", "PDDL-1.0"],
    ["https://opendatacommons.org/licenses/pddl/1-0/", "PDDL-1.0"],
  ])("“%s” is %s", (words, id) => {
    expect(readLicence(words)?.id).toBe(id);
  });

  it.each([
    ...["CC BY", "Creative Commons", "CC BY-SA", "CC BY 4", "CC BY 5.0", "CC BY 4.0.1", "4.0"],
    ...["CC BY 4.0?", "not CC BY 4.0", "CC BY 4.0 or CC0", "CC BY 4.0, CC0", "CC BY 3.0 DE"],
    ...["CC BY 4.0 for the records; the photographs are ours", "all rights reserved", ""],
    ...["CC BY 4.0 Unported", "CC BY 4.0 (https://creativecommons.org/licenses/by/3.0/)", "BY 4.0"],
    ...[
      "https://creativecommons.org/licenses/by/3.0/de/",
      "https://creativecommons.org.example/licenses/by/4.0/",
    ],
    ...["https://example.org/creativecommons.org/licenses/by/4.0/", "Ask us first", "no CC0"],
  ])("“%s” stays words", (words) => {
    expect(readLicence(words)).toBeUndefined();
  });

  it("a word beside a licence, before or behind, keeps it from being read", () => {
    const word = fc.stringMatching(/^[a-z]{2,12}$/u).filter((one) => !/^licen[cs]e$/u.test(one));
    const known = fc.constantFrom(...licences.flatMap(({ id, name }) => [id, name]));
    fc.assert(
      fc.property(known, word, (licence, other) => {
        fc.pre(
          !["international", "unported", "universal", "generic", "cc", "creative"].includes(other),
        );
        expect(readLicence(`${licence} ${other}`)).toBeUndefined();
        expect(readLicence(`${other} ${licence}`)).toBeUndefined();
      }),
    );
  });

  it("whatever is read names what the words name", () => {
    fc.assert(
      fc.property(fc.constantFrom(...licences), ({ id, name, address }) => {
        for (const words of [id, name, address, id.toLowerCase(), id.replaceAll("-", " ")])
          expect(readLicence(words)?.id).toBe(id);
      }),
    );
  });
});

describe("isLicenceUnread", () => {
  it.each([
    "CC BY",
    "Creative Commons",
    "CC BY 4",
    "CC BY-SA",
    "CC BY 5.0",
    "CC BY 3.0 unported, CC0",
  ])("“%s” looks like a licence and is not read", (words) => {
    expect(isLicenceUnread(words)).toBe(true);
  });

  it.each(["CC BY 4.0", "all rights reserved", "Ask us", "", "CC BY 4.0 for the records alone"])(
    "“%s” is read, or is the studio's own words",
    (words) => {
      expect(isLicenceUnread(words)).toBe(false);
    },
  );
});
