/**
 * Finds a Chromium to test pages with: the one CHROME_PATH names, else the system's, else, on Linux
 * for x64, the one that comes with the development packages.
 */
import { spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";

const project = fileURLToPath(new URL("../..", import.meta.url));

type Environment = Readonly<Record<string, string | undefined>>;

/** Where a browser is, and how it was come by. */
export type FoundBrowser = {
  readonly path: string;
  readonly from: "CHROME_PATH" | "this system" | "the development packages";
};

/**
 * The browser to test with.
 * @throws Error where there is none, saying how to get one.
 */
export function findBrowser(environment: Environment = process.env): FoundBrowser {
  const named = environment.CHROME_PATH;
  if (named) return { path: checkNamed(named), from: "CHROME_PATH" };
  const system = systemBrowsers(environment).find(answers);
  if (system) return { path: system, from: "this system" };
  if (process.platform === "linux" && process.arch === "x64") {
    return { path: unpackBrowser(), from: "the development packages" };
  }
  throw new Error(
    "The tests of pages need a browser, and there is none here. Install Google Chrome or Chromium, " +
      "or set CHROME_PATH to the program of one.",
  );
}

function checkNamed(path: string): string {
  if (existsSync(path)) return path;
  throw new Error(`CHROME_PATH names ${path}, and there is no such file. Mend it or unset it.`);
}

/** Places where a Chrome or Chromium of the system may be, the likeliest first. */
function systemBrowsers(environment: Environment): readonly string[] {
  if (process.platform === "darwin") {
    return ["/Applications", join(environment.HOME ?? "", "Applications")].flatMap((folder) => [
      join(folder, "Google Chrome.app/Contents/MacOS/Google Chrome"),
      join(folder, "Chromium.app/Contents/MacOS/Chromium"),
    ]);
  }
  if (process.platform === "win32") {
    const folders = ["ProgramFiles", "ProgramFiles(x86)", "LOCALAPPDATA"].map(
      (name) => environment[name] ?? "",
    );
    return ["Google/Chrome", "Chromium", "Microsoft/Edge"].flatMap((product) =>
      folders.map((folder) => join(folder, product, "Application", programOf(product))),
    );
  }
  const names = ["google-chrome", "google-chrome-stable", "chromium", "chromium-browser"];
  const folders = (environment.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

function programOf(product: string): string {
  return product === "Microsoft/Edge" ? "msedge.exe" : "chrome.exe";
}

/**
 * Whether a browser is there and, on Linux, tells its version: there a distribution may leave a
 * program in its place that only says where to get it. (On Windows the question would open a window.)
 */
function answers(path: string): boolean {
  if (!existsSync(path)) return false;
  return process.platform !== "linux" || spawnSync(path, ["--version"]).status === 0;
}

/**
 * Unpacks the Chromium of @sparticuz/chromium under node_modules, once for each version, and gives a
 * program that starts it with its own libraries and fonts. Only the flags that it needs to run without
 * a sandbox stand in it, none of those of its own that switch the web's security off.
 */
export function unpackBrowser(): string {
  const manifest = join(project, "node_modules/@sparticuz/chromium/package.json");
  const { version } = JSON.parse(readFileSync(manifest, "utf8")) as { version: string };
  const cache = join(project, "node_modules/.cache");
  const folder = join(cache, `test-browser-${version}`);
  const starter = join(folder, "start");
  if (existsSync(starter)) return starter;
  mkdirSync(cache, { recursive: true });
  const fresh = mkdtempSync(join(cache, "unpacking-"));
  unpackInto(fresh);
  writeFileSync(join(fresh, "start"), starterScript, { mode: 0o755 });
  try {
    renameSync(fresh, folder);
  } catch (error) {
    // Another test process was quicker.
    if (!existsSync(starter)) throw error;
    rmSync(fresh, { recursive: true });
  }
  return starter;
}

/**
 * Has the package unpack itself in a process of its own, because it goes by the environment: it writes
 * to TMPDIR, and brings its libraries (nss, expat) only where it believes to run at a certain host.
 */
function unpackInto(folder: string): void {
  const script = 'import chromium from "@sparticuz/chromium"; await chromium.executablePath();';
  const { status, stderr } = spawnSync(process.execPath, ["--input-type=module", "-e", script], {
    cwd: project,
    encoding: "utf8",
    env: { ...process.env, TMPDIR: folder, VERCEL: "1" },
  });
  if (status !== 0) throw new Error(`The browser for tests could not be unpacked: ${stderr}`);
}

const starterScript = `#!/bin/sh
here=$(dirname "$0")
export LD_LIBRARY_PATH="$here/al2023/lib" FONTCONFIG_PATH="$here/fonts"
exec "$here/chromium" --no-sandbox --no-zygote --disable-gpu "$@"
`;
