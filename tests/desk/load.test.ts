/** The page of a load: what it shows, what it warns of, and what it writes. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { LoadRequest, LoadView, LoadWritten, TriedWords } from "../../src/desk/load/types.ts";
import { sumsOf } from "../commands/site-files.ts";
import { type OpenedDesk, openSmallDesk } from "./desk-opened.ts";

const waiting = (clay: string) =>
  `---\nclay: ${clay}\nlayers:\n  - fired: bisque\n  - {glaze: soot, coats: 2}\n---\n`;

const more = {
  "recipes/clays/red.md": "---\nname: Red\ncones: 06-03\n---\n",
  ...Object.fromEntries(
    ["W-1", "W-2", "W-3", "W-4"].map((code) => [`tiles/evening/${code}.md`, waiting("buff")]),
  ),
  "tiles/evening/W-9.md": waiting("red"),
  "tiles/firings/g-2.md":
    "---\nkind: glaze\ncone: 6   # as always\ntiles:\n  top: [W-1, w-2] # careful\n---\nNotes.\n",
};

const begun = {
  ...{ id: "g-3", on: "", kind: "glaze", kiln: "Big electric", heatedBy: "electric" },
  ...{ atmosphere: "oxidation", cone: "6" },
};
const shelf = (name: string, ...codes: readonly string[]) => ({ name, codes });

const load = (firing: LoadRequest["firing"], ...shelves: LoadRequest["shelves"]): LoadRequest => ({
  ...{ firing, shelves, isHistory: false },
});

async function post<T>({ ask }: OpenedDesk, action: string, body: unknown): Promise<T> {
  const { status, text } = await ask("POST", `/desk/load/${action}`, { body });
  expect({ status, text }).toMatchObject({ status: 200 });
  return JSON.parse(text) as T;
}

async function viewOf({ ask }: OpenedDesk, id = ""): Promise<LoadView> {
  const { text } = await ask("GET", id === "" ? "/desk/load" : `/desk/load/${id}`);
  const data = /data-view="([^"]*)"/u.exec(text)?.[1] ?? "";
  return JSON.parse(
    data.replaceAll("&quot;", '"').replaceAll("&amp;", "&").replaceAll("&lt;", "<"),
  );
}

const recordOf = ({ archive }: OpenedDesk, file: string) => readFile(join(archive, file), "utf8");

test("the page shows who waits, what the kiln was given last time, and an id for today", async () => {
  const desk = await openSmallDesk(more);
  const view = await viewOf(desk);
  expect(view.tiles.find(({ code }) => code === "W-1")).toEqual({
    ...{ code: "W-1", set: "Evening class", words: "Soot, on Buff stoneware (cones 5–9)" },
    ...{ kinds: ["glaze", "once", "raku"], listedIn: "g-2" },
  });
  expect(view.tiles.map(({ code }) => code)).toEqual(["EV-3", "W-1", "W-2", "W-3", "W-4", "W-9"]);
  expect(view.habits.find(({ kiln }) => kiln === "Big electric")).toMatchObject({
    ...{ cone: "6", atmosphere: "oxidation", heatedBy: "electric", shelves: ["top", "bottom"] },
    words: "cone 6, oxidation, electric: as in g-1 on 20 October 2026",
  });
  expect(view.ids.glaze).toBe("g-3");
  expect((await desk.ask("GET", "/desk/load/nowhere")).status).toBe(404);
});

test("a load is tried before it is written, and nothing is written by that", async () => {
  const desk = await openSmallDesk(more);
  const before = await sumsOf(desk.archive);
  const tried = await post<TriedWords>(
    desk,
    "try",
    load({ begun }, shelf("top", "W-3..W-4", "W-9")),
  );
  expect(tried).toMatchObject({
    sum: "3 tiles. One cannot stay in as it is. 2 more to look at.",
    ...{ mayBeWritten: false, mayBeHistory: true, load: [] },
  });
  expect(
    tried.tiles.map(({ code, cautions }) => [code, cautions.map((each) => each.code)]),
  ).toEqual([
    ["W-3", ["glaze-runs"]],
    ["W-4", ["glaze-runs"]],
    ["W-9", ["may-melt", "glaze-runs"]],
  ]);
  expect(await sumsOf(desk.archive)).toEqual(before);
});

describe("a firing that is begun", () => {
  test("gets a record, with ranges where codes follow each other", async () => {
    const desk = await openSmallDesk(more);
    const shelves = [shelf("top", "W-1", "W-2", "W-3"), shelf("bottom", "W-4")];
    const written = await post<LoadWritten>(desk, "write", load({ begun }, ...shelves));
    expect(written).toMatchObject({ written: true, address: "/desk/load/g-3" });
    expect(await recordOf(desk, "tiles/firings/g-3.md")).toBe(
      "---\nkind: glaze\nkiln: Big electric\nheated-by: electric\natmosphere: oxidation\ncone: 6\ntiles: {top: [W-1..W-3], bottom: [W-4]}\n---\n",
    );
  });

  test.each([
    [{ id: "" }, "The firing needs an id: a short name for its file."],
    [
      { id: "../g-3" },
      "“../g-3” cannot be the id of a firing: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit.",
    ],
    [{ id: "G-1" }, "There is a firing “G-1” already. Take another id, or open that one."],
    [{ cone: "60" }, "There is no cone “60”."],
    [{ kind: "smoke" }, "“smoke” is not among the choices here"],
    [{ on: "yesterday" }, "“yesterday” is not written as a day"],
  ])("is refused with %j, and says why", async (wrong, words) => {
    const desk = await openSmallDesk(more);
    const before = await sumsOf(desk.archive);
    const asked = load({ begun: { ...begun, ...wrong } }, shelf("top", "W-3"));
    const written = await post<LoadWritten>(desk, "write", asked);
    expect(written.written).toBe(false);
    expect(written.words).toContain(words);
    expect(await sumsOf(desk.archive)).toEqual(before);
  });
});

describe("a firing that has a record", () => {
  const known = async (desk: OpenedDesk) => ({
    known: { id: "g-2", seen: (await viewOf(desk, "g-2")).firing?.seen ?? "" },
  });

  test("gets its list changed, and no other letter", async () => {
    const desk = await openSmallDesk(more);
    const asked = load(await known(desk), shelf("top", "W-2", "W-3", "W-4"), shelf("door", "EV-3"));
    expect(await post<LoadWritten>(desk, "write", asked)).toMatchObject({
      written: true,
      words: "Written into tiles/firings/g-2.md, lines 5 and 6.",
    });
    expect(await recordOf(desk, "tiles/firings/g-2.md")).toBe(
      "---\nkind: glaze\ncone: 6   # as always\ntiles:\n  top: [w-2, W-3, W-4] # careful\n  door: [EV-3]\n---\nNotes.\n",
    );
  });

  test("says so where there is nothing to change, and loses its list where all is taken off", async () => {
    const desk = await openSmallDesk(more);
    const same = await post<LoadWritten>(
      desk,
      "write",
      load(await known(desk), shelf("top", "W-1", "W-2")),
    );
    expect(same.words).toBe("tiles/firings/g-2.md says so already: nothing was written.");
    expect(await post<LoadWritten>(desk, "write", load(await known(desk)))).toMatchObject({
      written: true,
    });
    expect(await recordOf(desk, "tiles/firings/g-2.md")).toBe(
      "---\nkind: glaze\ncone: 6   # as always\n# careful\n---\nNotes.\n",
    );
  });

  test("is left alone where somebody changed it meanwhile", async () => {
    const desk = await openSmallDesk(more);
    const asked = load(await known(desk), shelf("top", "W-3"));
    const now = "---\nkind: glaze\ncone: 5\n---\n";
    await writeFile(join(desk.archive, "tiles/firings/g-2.md"), now);
    desk.changed();
    const { written, words } = await post<LoadWritten>(desk, "write", asked);
    expect({ written, words }).toEqual({
      written: false,
      words:
        "tiles/firings/g-2.md was changed after this page read it, so nothing was written. Load this page again, look at what is there now, and write once more.",
    });
    expect(await recordOf(desk, "tiles/firings/g-2.md")).toBe(now);
  });

  test("takes in what may melt only where somebody says that it has been fired like this", async () => {
    const desk = await openSmallDesk(more);
    const asked = load(await known(desk), shelf("top", "W-1", "W-2", "W-9"));
    const refused = await post<LoadWritten>(desk, "write", asked);
    expect(refused).toMatchObject({
      written: false,
      words: "Nothing was written. 3 tiles. One cannot stay in as it is. 2 more to look at.",
    });
    const history = await post<LoadWritten>(desk, "write", { ...asked, isHistory: true });
    expect(history.written).toBe(true);
    expect(await recordOf(desk, "tiles/firings/g-2.md")).toContain(
      "top: [W-1, w-2, W-9] # careful",
    );
  });

  test("takes in nobody's code, whatever is said of it", async () => {
    const desk = await openSmallDesk(more);
    const asked = load(await known(desk), shelf("top", "W-1", "W-77"));
    const tried = await post<TriedWords>(desk, "try", asked);
    expect(tried).toMatchObject({ mayBeWritten: false, mayBeHistory: false });
    const written = await post<LoadWritten>(desk, "write", { ...asked, isHistory: true });
    expect(written.written).toBe(false);
  });
});

test.each([
  [null],
  [{ firing: { begun } }],
  [{ firing: {}, shelves: [] }],
  [{ firing: { begun }, shelves: [{ name: "", codes: ["W-1"] }] }],
  [{ firing: { begun }, shelves: [{ name: "top", codes: [7] }] }],
  [{ firing: { begun }, shelves: [{ name: "top", codes: ["A-1..A-999", "B-1..B-999"] }] }],
  [{ firing: { begun: { ...begun, kiln: "x".repeat(2000) } }, shelves: [] }],
])("what no page would send is refused: %j", async (body) => {
  const { ask, failures } = await openSmallDesk(more);
  expect((await ask("POST", "/desk/load/write", { body })).status).toBe(400);
  expect(failures).toEqual([]);
});

test.each(["__proto__", "constructor", "top: [W-1] }", "<script>", "\u202egel", "a\nb"])(
  "a shelf called %j is a shelf or is refused, and nothing else comes of it",
  async (name) => {
    const desk = await openSmallDesk(more);
    const written = await post<LoadWritten>(desk, "write", load({ begun }, shelf(name, "W-3")));
    const check = await post<TriedWords>(desk, "try", load({ begun: { ...begun, id: "g-9" } }));
    expect(check.sum).toContain("0 tiles");
    if (!written.written) return;
    const { firing } = await viewOf(desk, "g-3");
    expect(firing?.shelves).toEqual([{ name, codes: ["W-3"] }]);
  },
);
