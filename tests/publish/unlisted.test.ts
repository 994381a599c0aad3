/** Nothing of an unlisted set is in the site for everyone, whatever it holds and shares; nor of any other set in what is shared of one. */
import fc from "fast-check";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { QrCode } from "../../templates/drawing/qr-code.tsx";
import {
  examine,
  packedDataOf,
  sharedSiteOf,
  sitesOf,
  type Texts,
} from "../support/site-in-memory.ts";

/** In every word that only the unlisted set has. */
const mark = "xqz";

const record = (fields: readonly string[], notes = "") =>
  ["---", ...fields, "---", notes, ""].join("\n");

interface Plan {
  readonly glazes: readonly ("shared" | "secret" | "blended" | "jar")[];
  readonly clay: "buff" | "secret";
  readonly load: "none" | "own" | "shared";
  readonly maker: "shown" | "namesake" | "none";
  readonly result: boolean;
  readonly touchUp: boolean;
}

const plan: fc.Arbitrary<Plan> = fc.record({
  glazes: fc.array(fc.constantFrom("shared", "secret", "blended", "jar"), {
    minLength: 1,
    maxLength: 3,
  }),
  clay: fc.constantFrom("buff", "secret"),
  load: fc.constantFrom("none", "own", "shared"),
  maker: fc.constantFrom("shown", "namesake", "none"),
  result: fc.boolean(),
  touchUp: fc.boolean(),
});

/** What everyone sees; `also` is put into the load list of the kiln that both shared. */
const open = (makers: string, also: string): Texts => ({
  "studio.yaml": `format: 1\nstudio: Eelgate\naddress: https://eelgate.example/\nmakers:\n  m1: {name: Ann Pike, shown: yes}\n${makers}`,
  "recipes/clays/buff.md": record([
    "name: Buff",
    "cones: 5-9",
    "expansion: {mean: 6, between: [20, 500]}",
  ]),
  "recipes/glazes/soot.md": record(["name: Soot", "kind: glaze", "bought: {maker: Oxbow}"]),
  "recipes/glazes/chalk.md": record([
    "name: Chalk",
    "kind: glaze",
    "cones: 5-7",
    "ingredients: [{material: potash-feldspar, parts: 60}, {material: whiting, parts: 20}, {material: silica, parts: 20}]",
  ]),
  "tiles/open/set.md": record([
    "name: Open",
    "kind: class",
    "teacher: m1",
    "jars: {1: soot}",
    "control: OP-1",
  ]),
  "tiles/open/OP-1.md": record([
    "maker: m1",
    "clay: buff",
    "layers: [{fired: bisque}, {glaze: chalk, coats: 2}, {fired: g-1}]",
    "result: {surface: gloss, effects: [pooling], again: yes}",
  ]),
  "tiles/open/OP-2.md": record([
    "clay: buff",
    "layers: [{glaze: chalk, coats: 1}, {glaze: 1, coats: 1}]",
  ]),
  "tiles/firings/g-1.md": record([
    "on: 2026-10-20",
    "kind: glaze",
    "kiln: Big",
    "cone: 6",
    "atmosphere: oxidation",
    `tiles: {top: [OP-1], bottom: [OP-2${also}]}`,
    "schedule: [{to: 1000, rate: 150}, {to: 1222, rate: 60, hold: 10}]",
  ]),
});

const secretRecords: Texts = {
  [`recipes/clays/${mark}-clay.md`]: record(
    [`name: Clay ${mark}`, "cones: 5-9", "expansion: 5"],
    mark,
  ),
  [`recipes/materials/${mark}-ash.md`]: record(
    [`name: Ash ${mark}`, "formula: CaO", `cautions: ${mark}`],
    mark,
  ),
  [`recipes/glazes/${mark}-glaze.md`]: record(
    [
      `name: Glaze ${mark}`,
      "kind: glaze",
      "cones: 5-7",
      `ingredients: [{material: ${mark}-ash, parts: 20}, {material: potash-feldspar, parts: 60}, {material: silica, parts: 20}]`,
    ],
    mark,
  ),
  [`recipes/glazes/${mark}-blend.md`]: record([
    `name: Blend ${mark}`,
    "kind: glaze",
    `blend: [{glaze: ${mark}-glaze, parts: 50}, {glaze: chalk, parts: 50}]`,
  ]),
};

const glazeIds = { shared: "chalk", secret: `${mark}-glaze`, blended: `${mark}-blend`, jar: "8" };

function tileOf({ glazes, clay, load, maker, result, touchUp }: Plan): string {
  return record(
    [
      ...(maker === "none" ? [] : [`maker: ${maker === "shown" ? "h1" : "h2"}`]),
      `clay: ${clay === "buff" ? "buff" : `${mark}-clay`}`,
      `texture: ${mark} comb`,
      "layers:",
      "  - fired: bisque",
      ...glazes.map((glaze) => `  - {glaze: ${glazeIds[glaze]}, coats: 2, detail: ${mark}}`),
      ...(touchUp ? [`  - {glaze: chalk, touch-up: yes, detail: ${mark}}`] : []),
      ...(load === "own" ? [`  - {fired: ${mark}-g, shelf: ${mark}}`] : []),
      ...(result && load !== "none"
        ? [`result: {surface: satin, faults: [crazing], next-time: ${mark}}`]
        : []),
      `photo: {alt: ${mark}}`,
      `formerly: [${mark}-old]`,
    ],
    mark,
  );
}

const unlisted = ["listed: no", "link: k7wq2mzt4hx3vb5nrd6yfp2cja"];

function withHidden(plans: readonly Plan[], listing: readonly string[] = unlisted): Texts {
  const tiles = plans.map((each, i) => [`tiles/${mark}/${mark}-${i}.md`, tileOf(each)] as const);
  const formerlyOnce = tiles.map(([path, text], i) => [path, text.replace("-old", `-old-${i}`)]);
  const shared = plans.flatMap(({ load }, i) => (load === "shared" ? [`, ${mark}-${i}`] : []));
  return {
    ...open(
      `  h1: {name: Ann ${mark}, shown: yes}\n  h2: {name: Ann Pike, shown: yes}\n`,
      [...shared, `, ${mark}-90`].join(""),
    ),
    ...secretRecords,
    [`tiles/${mark}/set.md`]: record(
      [
        `name: Set ${mark}`,
        ...listing,
        "teacher: h1",
        `codes: ${mark}-90..${mark}-95`,
        `jars: {8: ${mark}-glaze, 9: ${mark}-blend}`,
        `defaults: {clay: ${mark}-clay}`,
      ],
      mark,
    ),
    [`tiles/firings/${mark}-g.md`]: record(
      [
        "on: 2026-11-20",
        "kind: glaze",
        `kiln: Kiln ${mark}`,
        "cone: 6",
        `tiles: {${mark}: [${mark}-91]}`,
      ],
      mark,
    ),
    ...Object.fromEntries(formerlyOnce),
  };
}

const errorsIn = (problems: readonly { severity: string; message: string }[]) =>
  problems
    .filter(({ severity, message }) => severity === "error" && !message.includes("photograph"))
    .map(({ message }) => message);

describe("a site with an unlisted set", () => {
  const without = examine(open("", ""));
  if (!without.read.archive) throw new Error("the archive without a set cannot be read");
  const plain = sitesOf(without.read.archive, without.problems);

  it("is byte for byte the site without it, and the set's own site holds it", () => {
    fc.assert(
      fc.property(fc.array(plan, { minLength: 1, maxLength: 4 }), (plans) => {
        const { read, problems } = examine(withHidden(plans));
        expect(errorsIn(problems)).toEqual([]);
        if (!read.archive) throw new Error("the archive cannot be read");
        const { open: site, hidden, catalogue } = sitesOf(read.archive, problems);
        for (const [path, content] of site) expect(`${path} ${content}`).not.toMatch(/xqz/iu);
        expect(site).toEqual(plain.open);
        expect([...catalogue.tiles, ...catalogue.glazes, ...catalogue.firings]).toHaveLength(
          2 + 2 + 1,
        );
        expect([...(hidden.get(mark)?.values() ?? [])].join("")).toContain(mark);
      }),
      { numRuns: 20 },
    );
  });

  it("holds nothing of it in the files that are packed, and those are the same byte for byte", async () => {
    const packed = await packedDataOf(plain.catalogue);
    expect(packed.get("data/tilebook.sqlite")).toContain("chalk");
    expect(packed.get("data/layers.parquet")).toContain("chalk");
    await fc.assert(
      fc.asyncProperty(fc.array(plan, { minLength: 1, maxLength: 4 }), async (plans) => {
        const { read, problems } = examine(withHidden(plans));
        if (!read.archive) throw new Error("the archive cannot be read");
        const { catalogue } = sitesOf(read.archive, problems);
        const now = await packedDataOf(catalogue);
        for (const [path, content] of now) expect(`${path} ${content}`).not.toMatch(/xqz/iu);
        expect(now).toEqual(packed);
      }),
      { numRuns: 3 },
    );
  });

  it("is not where a label of the set leads: its codes lead to the set's own site", () => {
    const { read, problems } = examine(
      withHidden([
        {
          glazes: ["shared"],
          clay: "buff",
          load: "none",
          maker: "none",
          result: true,
          touchUp: false,
        },
      ]),
    );
    if (!read.archive) throw new Error("the archive cannot be read");
    const labels = sitesOf(read.archive, problems).hidden.get(mark)?.get(`labels/${mark}.html`);
    const text = `https://eelgate.example/s/k7wq2mzt4hx3vb5nrd6yfp2cja/tiles/${mark}-90.html`;
    expect(String(labels)).toContain(
      renderToString(h(QrCode, { text, label: `QR code of ${mark}-90` })),
    );
  });

  it("holds nothing of it in the catalogue that pages are made of either", () => {
    fc.assert(
      fc.property(fc.array(plan, { minLength: 1, maxLength: 4 }), (plans) => {
        const { read, problems } = examine(withHidden(plans));
        if (!read.archive) throw new Error("the archive cannot be read");
        const { catalogue } = sitesOf(read.archive, problems);
        expect(JSON.stringify(catalogue)).not.toMatch(/xqz/iu);
      }),
      { numRuns: 20 },
    );
  });
});

describe("what is shared of a set", () => {
  const { read, problems } = examine(open("", ""));
  if (!read.archive) throw new Error("the archive without another set cannot be read");
  const alone = sharedSiteOf(read.archive, problems, "open");

  it("is byte for byte the same whatever other set there is, unlisted or for all to see", () => {
    const others = fc.record({
      plans: fc.array(plan, { minLength: 1, maxLength: 4 }),
      listing: fc.constantFrom(unlisted, []),
    });
    fc.assert(
      fc.property(others, ({ plans, listing }) => {
        const whole = examine(withHidden(plans, listing));
        if (!whole.read.archive) throw new Error("the archive cannot be read");
        const shared = sharedSiteOf(whole.read.archive, whole.problems, "open");
        for (const [path, content] of shared) expect(`${path} ${content}`).not.toMatch(/xqz/iu);
        expect(shared).toEqual(alone);
      }),
      { numRuns: 20 },
    );
  });
});
