import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { beforeAll, describe, expect, test } from "vitest";
import { project } from "../house/files.ts";
import type { Texts } from "../support/files-in-memory.ts";
import { examine } from "./examine.ts";

/** More than this would keep a phone on a slow line waiting. */
const mostKiB = 150;

interface Bundle {
  readonly script: string;
  readonly files: readonly string[];
}

/** Bundles as the site's own scripts are: for a browser, so that a module of Node's is an error. */
async function bundle(): Promise<Bundle> {
  const { outputFiles, metafile } = await build({
    entryPoints: [join(project, "tests/browser/examine.ts")],
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    format: "iife",
    globalName: "rooms",
    target: ["es2022"],
    charset: "utf8",
    legalComments: "none",
    logLevel: "silent",
  });
  return { script: outputFiles[0]?.text ?? "", files: Object.keys(metafile.inputs) };
}

/** The text files of an archive by their paths in it. */
function readTexts(folder: string): Texts {
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" });
  const texts = paths.filter((path) => /\.(md|yaml)$/u.test(path));
  return Object.fromEntries(
    texts.map((path) => [path.replaceAll("\\", "/"), readFileSync(join(folder, path), "utf8")]),
  );
}

describe("the rooms that are pure, bundled for a browser", () => {
  let bundled: Bundle;
  beforeAll(async () => {
    bundled = await bundle();
  });

  test(`are no more than ${mostKiB} KiB on their way`, () => {
    const kib = gzipSync(bundled.script, { level: 9 }).length / 1024;
    expect(kib, `they are ${kib.toFixed(1)} KiB, compressed`).toBeLessThanOrEqual(mostKiB);
  });

  test("leave the reading of logs out, whose package needs what only Node has", () => {
    expect(bundled.files.filter((file) => file.includes("csv-parse"))).toEqual([]);
  });

  test.each(["sound", "faulty"])(
    "find of the %s archive, with nothing of Node's around, what the program finds",
    (name) => {
      const texts = readTexts(join(project, "tests/archives", name));
      const page = createContext({ TextDecoder, TextEncoder, URL, texts });
      const found: unknown = runInContext(`${bundled.script}; rooms.examine(texts)`, page);
      expect(String(found).length).toBeGreaterThan(1000);
      expect(found).toBe(examine(texts));
    },
  );
});
