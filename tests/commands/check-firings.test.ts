/** Whole archives whose firings have logs: a sound one, and one with a fault of every kind. */
import { describe, expect, test } from "vitest";
import type { Files } from "../support/archive-folder.ts";
import { archiveWith, type ToldProblem } from "./archives.ts";
import { tilebook } from "./tilebook.ts";

const rows = (labels: string, peak: number) =>
  [
    labels,
    ...Array.from({ length: (peak - 20) / 10 + 1 }, (_, i) => `${i * 10},${20 + i * 10}`),
  ].join("\n");

const record = (...lines: readonly string[]) =>
  ["---", "on: 2026-11-01", "kind: glaze", ...lines, "---"].join("\n");

async function checkWith(files: Files): Promise<{ code: number | null; told: string[] }> {
  const archive = await archiveWith(files);
  const { code, out } = await tilebook("check", "--archive", archive, "--format", "json");
  const { problems } = JSON.parse(out) as {
    problems: (ToldProblem & { readonly column: number })[];
  };
  return {
    code,
    told: problems
      .filter(({ file }) => file.startsWith("tiles/firings/"))
      .map(
        ({ severity, file, line, column, code: rule }) =>
          `${severity} ${file}:${line}:${column} ${rule}`,
      ),
  };
}

describe("the firings of an archive", () => {
  test("are not spoken of where schedule, log, cones and aim tell one story", async () => {
    const found = await checkWith({
      "tiles/firings/g-2.md": record(
        "cone: 6",
        "witness: {top: {5: down, 6: bent, 7: standing}, bottom: 6}",
        "schedule:",
        "  - {to: 1220, rate: 60}",
        "log: g-2.csv",
      ),
      "tiles/firings/g-2.csv": rows("minutes,°C", 1220),
    });
    expect(found).toEqual({ code: 0, told: [] });
  });

  test("are told of file by file, a log's fault in the log itself and on its line", async () => {
    const found = await checkWith({
      "tiles/firings/g-2.md": record(
        "cone: 6",
        "schedule:",
        "  - {to: 600, rate: 100}",
        "  - {to: 2232, rate: 108}",
      ),
      "tiles/firings/g-3.md": record("cone: 6", "log: G-3.csv"),
      "tiles/firings/g-3.csv": rows("minutes,reading", 1220),
      "tiles/firings/g-4.md": record("cone: 6", "witness: {top: 9}", "log: g-4.csv"),
      "tiles/firings/g-4.csv": rows("logger 3\nminutes,°C", 1220).replace("200,220", "200,"),
      "tiles/firings/g-5.md": record("cone: 6", "witness: {top: 06}"),
      "tiles/firings/g-6.md": record("witness:", "  top: {5: standing, 6: bent}"),
    });
    expect(found).toEqual({
      code: 1,
      told: [
        "error tiles/firings/g-2.md:7:10 schedule-fault",
        "error tiles/firings/g-3.csv:1:1 log-unusable",
        "warning tiles/firings/g-4.csv:23:1 log-doubtful",
        "warning tiles/firings/g-4.md:5:10 story-differs",
        "warning tiles/firings/g-5.md:4:7 nought-mistaken",
        "warning tiles/firings/g-6.md:5:8 witness-contradicts",
      ],
    });
  });

  test("show in a terminal the line of the log that is meant", async () => {
    const archive = await archiveWith({
      "tiles/firings/g-2.md": record("log: g-2.csv"),
      "tiles/firings/g-2.csv": rows("minutes,°C", 1220).replace("200,220", "200,9999"),
    });
    const { code, out } = await tilebook("check", "--archive", archive);
    expect(code).toBe(0);
    expect(out).toContain("tiles/firings/g-2.csv:22:1 warning: The probe dropped out: 1 row");
    expect(out).toContain("  22 | 200,9999");
  });

  test("stop a build where what is still to come would melt over the shelves", async () => {
    const archive = await archiveWith({
      "tiles/firings/g-2.md":
        "---\nkind: glaze\ncone: 06\nschedule:\n  - {to: 1220, rate: 60}\n---\n",
    });
    const { code, out } = await tilebook("build", "--archive", archive, "--out", `${archive}/site`);
    expect(code).toBe(1);
    expect(out).toContain(
      "Aimed at cone 06; the programme works out at cone 6: its climb alone is about 220 °C (390 °F) too hot",
    );
  });
});
