import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, expect, test } from "vitest";
import { removeFolderNow } from "./support/remove-folder.ts";

const setup = fileURLToPath(new URL("../src/setup.mjs", import.meta.url));
const here = { os: [process.platform], cpu: [process.arch] };
const elsewhere = { os: ["plan9"], cpu: ["mips"] };

const locked = {
  "": {},
  "node_modules/a": { version: "1.0.0", integrity: "sha512-a" },
  "node_modules/native-elsewhere": { version: "2.0.0", optional: true, ...elsewhere },
};
const { "": _project, "node_modules/native-elsewhere": _native, ...installed } = locked;

let checkout = "";
beforeEach(() => {
  checkout = mkdtempSync(join(tmpdir(), "tilebook-setup-"));
  mkdirSync(join(checkout, "src"));
  cpSync(setup, join(checkout, "src/setup.mjs"));
  write("package.json", JSON.stringify({ type: "module", engines: { node: ">=20.19" } }));
  write("package-lock.json", JSON.stringify({ packages: locked }));
  write("src/tilebook.mjs", 'console.log("tilebook", ...process.argv.slice(2), process.cwd());');
  write("npm-cli.js", 'console.log("npm", ...process.argv.slice(2));');
});
afterEach(() => removeFolderNow(checkout));

function write(path: string, text: string): void {
  const file = join(checkout, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}

/** Writes down what npm would have installed, with a folder for each package. */
function haveInstalled(packages: object): void {
  for (const path of Object.keys(packages)) mkdirSync(join(checkout, path), { recursive: true });
  write("node_modules/.package-lock.json", JSON.stringify({ packages }));
}

/** Runs `npm start` in the checkout, from another folder, with an npm that only tells its arguments. */
function start(...args: readonly string[]): {
  lines: string[];
  messages: string;
  status: number | null;
} {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [join(checkout, "src/setup.mjs"), "start", ...args],
    {
      cwd: tmpdir(),
      encoding: "utf8",
      env: { ...process.env, npm_execpath: join(checkout, "npm-cli.js") },
    },
  );
  return { lines: stdout.trim().split("\n"), messages: stderr, status };
}

const served = () => expect.stringMatching(/^tilebook serve .*tilebook-setup-/);

test("where nothing is installed, npm ci comes first, then the archive of the checkout is served", () => {
  const { lines, messages } = start("--port", "8123");
  expect(lines).toEqual([
    "npm ci --include=dev",
    expect.stringMatching(/^tilebook serve --port 8123 .*tilebook-setup-/),
  ]);
  expect(messages).toBe(
    "setup: Installing what Tilebook is built from (npm ci); this takes a minute the first time.\n",
  );
});

test("where all is installed as the lock says, nothing is installed again", () => {
  haveInstalled(installed);
  expect(start()).toEqual({ lines: [served()], messages: "", status: 0 });
});

test.each([
  ["another version", { "node_modules/a": { version: "1.0.1", integrity: "sha512-a" } }],
  ["other contents", { "node_modules/a": { version: "1.0.0", integrity: "sha512-z" } }],
  ["a package too many", { ...installed, "node_modules/b": { version: "1.0.0" } }],
  ["a package too few", {}],
])("%s than the lock says is installed anew", (_what, packages) => {
  haveInstalled(packages);
  expect(start().lines).toEqual(["npm ci --include=dev", served()]);
});

test("a package whose folder is gone is installed anew", () => {
  haveInstalled(installed);
  rmSync(join(checkout, "node_modules/a"), { recursive: true });
  expect(start().lines).toEqual(["npm ci --include=dev", served()]);
});

test("a native build for this machine that is missing is installed, say in a folder brought from another", () => {
  const native = { "node_modules/native-here": { version: "2.0.0", optional: true, ...here } };
  write("package-lock.json", JSON.stringify({ packages: { ...locked, ...native } }));
  haveInstalled(installed);
  expect(start().lines).toEqual(["npm ci --include=dev", served()]);
});

test("where npm fails, the work does not begin, and the exit code says the machine failed", () => {
  write("npm-cli.js", "process.exitCode = 1;");
  const { lines, messages, status } = start();
  expect({ lines, status }).toEqual({ lines: [""], status: 3 });
  expect(messages).toContain("npm could not install what Tilebook is built from");
});

test("a Node older than package.json asks for is told which one it takes", () => {
  write("package.json", JSON.stringify({ type: "module", engines: { node: ">=99.5" } }));
  const { messages, status } = start();
  expect(status).toBe(3);
  expect(messages).toBe(
    `setup: Tilebook needs Node 99.5 or newer, and this is Node ${process.versions.node}. ` +
      "Install the current long-term release from nodejs.org, then run the same command again.\n",
  );
});
