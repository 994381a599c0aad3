/** The worked examples of docs/data.md, run from its very text on the demonstration. */
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import { parse } from "csv-parse/sync";
import { Parser } from "hot-formula-parser";
import { loadPyodide } from "pyodide";
import initSqlJs from "sql.js";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { listRunners } from "../../src/catalogue/runners.ts";
import { dataEntriesOf } from "../../src/publish/data/files.ts";
import { project } from "../house/files.ts";
import { demonstration } from "../publish/tables/demonstration.ts";
import { removeFolderNow } from "../support/remove-folder.ts";

const page = readFileSync(join(project, "docs/data.md"), "utf8");

/** What stands below a heading of the page, up to the next. */
function part(heading: string): string {
  const [, found] = page.split(new RegExp(`^## ${heading}.*$`, "mu"));
  return found?.split(/^## /mu)[0] ?? "";
}

/** The blocks of code in some text, without what they are moved to the right by. */
function blocksOf(text: string, language = ""): readonly string[] {
  const blocks = text.matchAll(new RegExp(`^( *)\`\`\`${language}\\n(.*?)^\\1\`\`\`$`, "gmsu"));
  return [...blocks].map(([, indent = "", code = ""]) =>
    code.replaceAll(new RegExp(`^${indent}`, "gmu"), ""),
  );
}

/** The lines of the first table in some text, without its head. */
function tableOf(text: string): readonly (readonly string[])[] {
  const lines = text.split("\n").filter((line) => /^ *\|/u.test(line));
  return lines.slice(2).map((line) =>
    line
      .trim()
      .slice(1, -1)
      .split("|")
      .map((cell) => cell.trim()),
  );
}

const files = new Map<string, string | Uint8Array>();
const folder = mkdtempSync(join(tmpdir(), "tilebook-data-"));

beforeAll(async () => {
  for (const { path, make } of dataEntriesOf(demonstration())) {
    const name = path.slice("data/".length);
    files.set(name, await make());
    if (name.endsWith(".parquet")) writeFileSync(join(folder, name), await make());
  }
});
afterAll(() => removeFolderNow(folder));

const textOf = (name: string) => String(files.get(name));

describe("the spreadsheet", () => {
  const cells: (string | number)[][] = [];
  const formulas = new Map(
    blocksOf(part("With a spreadsheet"))
      .flatMap((block) => block.trim().split("\n"))
      .map((line) => {
        const [, cell = "", formula = ""] = /^([A-Z]+\d+) =(.+)$/u.exec(line) ?? [];
        return [cell, formula] as const;
      }),
  );

  /** Formula text, reckoned by a general library of what spreadsheets do. */
  function reckon(formula: string): unknown {
    const parser = new Parser();
    // An empty cell meets no condition, as in a spreadsheet.
    const at = (row: number, column: number) => {
      const cell = cells[row]?.[column];
      return cell === "" ? undefined : cell;
    };
    parser.on("callCellValue", ({ row, column }, done) => done(at(row.index, column.index)));
    parser.on("callRangeValue", (from, to, done) => {
      const rows = [];
      for (let row = from.row.index; row <= to.row.index; row += 1) {
        const values = [];
        for (let i = from.column.index; i <= to.column.index; i += 1) values.push(at(row, i));
        rows.push(values);
      }
      done(rows);
    });
    const { error, result } = parser.parse(formula);
    expect(error, formula).toBeNull();
    return result;
  }

  beforeAll(() => {
    // As a spreadsheet opens it: what looks like a number is one.
    const lines: readonly string[][] = parse(textOf("tiles.csv"), { bom: true });
    cells.push(
      ...lines.map((line) =>
        line.map((cell) => (/^-?\d+(?:\.\d+)?$/u.test(cell) ? Number(cell) : cell)),
      ),
    );
    const helper = formulas.get("AB16") ?? "";
    for (let line = 16; line <= 28; line += 1)
      cells[line - 1]?.splice(27, 1, Number(reckon(helper.replaceAll("R16", `R${line}`))));
  });

  test("has the control tiles and the columns where the page says", () => {
    expect(cells.slice(15, 28).map(([code]) => code)).toEqual(
      Array.from({ length: 13 }, (_, i) => `CT-${String(i + 1).padStart(2, "0")}`),
    );
    expect(cells[0]?.indexOf("run")).toBe(15);
    expect(cells[0]?.indexOf("layers")).toBe(17);
    expect(cells[0]?.indexOf("cone_in_words")).toBe(26);
    expect(cells.filter(([code]) => String(code).startsWith("CT-"))).toHaveLength(13);
  });

  test("compares tiles that differ in nothing but their load", () => {
    const glazes = new Set(
      cells.slice(15, 28).map((line) => /; (.*?); fired/u.exec(String(line[17]))?.[1]),
    );
    expect([...glazes]).toEqual(["tidewrack × 2"]);
    for (const column of ["clay", "texture", "shape", "angle", "atmosphere"]) {
      const at = cells[0]?.indexOf(column) ?? -1;
      expect(new Set(cells.slice(15, 28).map((line) => line[at])).size, column).toBe(1);
    }
  });

  test("works out what the page says of every cone", () => {
    const told = tableOf(part("With a spreadsheet"));
    expect(told.length).toBe(6);
    for (const [cone = "", ...figures] of told) {
      const found = ["AD16", "AE16", "AF16"].map((cell) =>
        Number(reckon((formulas.get(cell) ?? "").replace("cone 6", cone))),
      );
      expect(
        found.map((figure) => String(Math.round(figure * 100) / 100)),
        cone,
      ).toEqual(figures);
    }
    const cones = new Set(cells.slice(15, 28).map((line) => line[26]));
    expect(told.map(([cone]) => cone).sort()).toEqual([...cones].sort());
  });
});

describe("SQL", () => {
  const [query = "", views = ""] = blocksOf(part("With SQL"), "sql");

  test("answers from the SQLite file what the page says", async () => {
    const database = new (await initSqlJs()).Database(files.get("tilebook.sqlite") as Uint8Array);
    const [{ columns, values } = { columns: [], values: [] }] = database.exec(query);
    database.close();
    expect(columns).toEqual([
      "pair",
      "tile",
      "run",
      "shape",
      "clay",
      "atmosphere",
      "measured_alike",
    ]);
    expect(values.map((row) => row.map(String))).toEqual(tableOf(part("With SQL")));
  });

  test("answers the same from the Parquet files", async () => {
    const connection = await (await DuckDBInstance.create()).connect();
    await connection.run(views.replaceAll("'tile", `'${join(folder, "tile")}`));
    const rows = (await connection.runAndReadAll(query)).getRows();
    connection.closeSync();
    expect(rows.map((row) => row.map(String))).toEqual(tableOf(part("With SQL")));
  });

  test("names the tiles that the page of what runs has of pairs at cone 6", () => {
    const shown = listRunners(demonstration())
      .filter(
        ({ layers, page: of, circumstance }) =>
          layers.length === 2 && of && circumstance.cone === "6",
      )
      .flatMap(({ ran }) => ran)
      .filter(({ run }) => run !== null && run > 20)
      .sort((a, b) => Number(b.run) - Number(a.run));
    expect(tableOf(part("With SQL")).map(([, tile]) => tile)).toEqual(shown.map(({ id }) => id));
  });
});

describe("the notebook", () => {
  interface Cell {
    readonly cell_type: string;
    readonly source: readonly string[];
    readonly outputs?: readonly unknown[];
  }
  const { cells } = JSON.parse(
    readFileSync(join(project, "docs/examples/tiles.ipynb"), "utf8"),
  ) as {
    readonly cells: readonly Cell[];
  };
  const code = cells.filter(({ cell_type }) => cell_type === "code");
  /** What each cell of code prints. */
  const printed: string[][] = [];

  beforeAll(async () => {
    const python = await loadPyodide();
    python.FS.mkdir("data");
    for (const name of ["tiles.json", "glazes.json", "tilebook.sqlite"])
      python.FS.writeFile(`data/${name}`, files.get(name) ?? "");
    for (const { source } of code) {
      const lines: string[] = [];
      python.setStdout({ batched: (line) => lines.push(line) });
      python.runPython(source.join(""));
      printed.push(lines);
    }
  }, 60_000);

  test("is kept without outputs, which would be those of another archive", () => {
    expect(code.flatMap(({ outputs = [] }) => outputs)).toEqual([]);
  });

  test("prints of running what the page says", () => {
    const [told = ""] = blocksOf(part("With a notebook"));
    expect(printed[2]).toEqual(told.trim().split("\n"));
  });

  test("tells of the colour of every pair by itself, with the tiles it rests on", () => {
    const [pairs, last] = [printed[3]?.slice(0, -1) ?? [], printed[3]?.at(-1)];
    expect(pairs).toHaveLength(5);
    for (const line of pairs)
      expect(line).toMatch(
        /^[A-Z][\w, ]+: \d coats? \([A-Z]{2}-\d+\) [\d.]+, \d coats? \([A-Z]{2}-\d+\) [\d.]+: (?:lighter|darker|as light), [\d.]+ apart\. (?:Nothing else is known to differ|Also differs: [a-z, ]+)\.$/u,
      );
    expect(last).toMatch(
      /^For comparison: of \d+ pairs made and fired alike, the two farthest apart are [\d.]+ apart\.$/u,
    );
  });
});
