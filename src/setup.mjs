/*
 * `npm start` and `npm test` on a machine that has Node and npm and nothing else: look at Node's
 * version, install what package-lock.json names where it is not there yet, and go on to the work.
 * Plain JavaScript without dependencies, because it runs before there are any.
 */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";

const project = fileURLToPath(new URL("..", import.meta.url));
const machineFailed = 3;

const work = {
  /** Build the archive in this checkout and serve it, in this very process, so that Ctrl-C reaches it. */
  start: async (rest) => {
    process.argv.splice(2, process.argv.length, "serve", ...rest);
    await import("./tilebook.mjs");
  },
  test: (rest) => {
    process.exitCode = runNode(["--import", "tsx", "tests/support/run-checks.ts", ...rest]);
  },
};

process.chdir(project);
checkNode();
const [task, ...rest] = process.argv.slice(2);
if (!Object.hasOwn(work, task ?? "")) fail("Run this as `npm start` or `npm test`.");
if (!installedAsLocked()) install();
await work[task](rest);

/** Ends the program where this Node is older than package.json asks. */
function checkNode() {
  const wanted = /(\d+)\.(\d+)/.exec(readJson("package.json").engines.node).slice(1).map(Number);
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major > wanted[0] || (major === wanted[0] && minor >= wanted[1])) return;
  fail(
    `Tilebook needs Node ${wanted.join(".")} or newer, and this is Node ${process.versions.node}. ` +
      "Install the current long-term release from nodejs.org, then run the same command again.",
  );
}

/**
 * Whether node_modules holds what package-lock.json names, no more and no less. npm writes down what
 * it installed in node_modules/.package-lock.json as its last step, so a broken-off install has none.
 */
function installedAsLocked() {
  if (!existsSync("node_modules/.package-lock.json")) return false;
  const locked = readJson("package-lock.json").packages;
  const installed = readJson("node_modules/.package-lock.json").packages;
  const asLocked = Object.entries(installed).every(
    ([path, { version, integrity }]) =>
      locked[path]?.version === version && locked[path].integrity === integrity && existsSync(path),
  );
  const missing = Object.entries(locked).filter(([path]) => path !== "" && !installed[path]);
  return asLocked && missing.every(([, entry]) => entry.optional && !isForThisMachine(entry));
}

/**
 * Whether an optional package is a native build for this system. Where Linux has two of each, one a C
 * library, only the builds that work with either tell something.
 */
function isForThisMachine({ os, cpu, libc }) {
  return Boolean(os?.includes(process.platform) && cpu?.includes(process.arch) && !libc);
}

/** Installs from the lock file, the tools for development included whatever NODE_ENV says. */
function install() {
  say("Installing what Tilebook is built from (npm ci); this takes a minute the first time.");
  if (runNpm(["ci", "--include=dev"]) === 0) return;
  fail(
    "npm could not install what Tilebook is built from; its own message stands above. " +
      "If it speaks of the network, look at the connection; then run the same command again.",
  );
}

/** Runs npm: the one that started this program where there is one, else the one on the path. */
function runNpm(args) {
  const npm = process.env.npm_execpath ?? "";
  if (/^npm(-cli)?\.c?js$/.test(basename(npm))) return runNode([npm, ...args]);
  return run("npm", args, { shell: process.platform === "win32" });
}

function runNode(args) {
  return run(process.execPath, args);
}

function run(command, args, options = {}) {
  const { status, error } = spawnSync(command, args, { stdio: "inherit", ...options });
  if (error) say(`${command} did not start: ${error.message}`);
  return status ?? machineFailed;
}

function readJson(path) {
  return JSON.parse(readFileSync(join(project, path), "utf8"));
}

function say(message) {
  process.stderr.write(`setup: ${message}\n`);
}

function fail(message) {
  say(message);
  process.exit(machineFailed);
}
