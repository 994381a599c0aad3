/**
 * The styles of each kind of page: of `templates/styles/site.css` those rules that its own template and
 * scripts speak of, in their order, as one file. What a page does not use it does not load.
 */
import { readdir } from "node:fs/promises";
import { basename, join } from "node:path";
import { build, transform } from "esbuild";
import postcss from "postcss";

/**
 * @param {string} project
 * @returns {Promise<Readonly<Record<string, string>>>} the styles, by the name of their file
 */
export async function stylesOfPages(project) {
  const folder = join(project, "templates/pages");
  const pages = (await readdir(folder)).filter((name) => name.endsWith("-page.tsx"));
  const scripts = await listScripts(project);
  const code = await bundleCode(project, [
    ...pages.map((name) => join(folder, name)),
    ...scripts.map((name) => join(project, "src/browser", name)),
  ]);
  const whole = await bundleStyles(project);
  const styles = pages.map(async (file) => {
    const page = basename(file, ".tsx");
    return [`${page.replace(/-page$/u, "")}.css`, await stylesFor(whole, withScripts(page, code))];
  });
  return Object.fromEntries(await Promise.all(styles));
}

/**
 * A script a page loads is a file of `src/browser/` itself; its parts lie in folders there.
 *
 * @param {string} project
 */
export async function listScripts(project) {
  const entries = await readdir(join(project, "src/browser"), { withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map(({ name }) => name)
    .sort();
}

/** @param {string} project */
async function bundleStyles(project) {
  const { outputFiles } = await build({
    entryPoints: [join(project, "templates/styles/site.css")],
    bundle: true,
    write: false,
    external: ["*.woff2"],
    logLevel: "error",
  });
  return outputFiles[0]?.text ?? "";
}

/**
 * Files as they run, each with all of what it imports that it uses.
 *
 * @param {string} project
 * @param {string[]} entryPoints
 * @returns {Promise<ReadonlyMap<string, string>>} by the name of the file
 */
async function bundleCode(project, entryPoints) {
  const { outputFiles } = await build({
    entryPoints,
    entryNames: "[name]",
    outdir: project,
    tsconfig: join(project, "tsconfig.json"),
    bundle: true,
    write: false,
    packages: "external",
    external: ["*/pagefind.js"],
    format: "esm",
    logLevel: "error",
  });
  return new Map(outputFiles.map(({ path, text }) => [basename(path, ".js"), text]));
}

/**
 * @param {string} page
 * @param {ReadonlyMap<string, string>} code
 */
function withScripts(page, code) {
  const own = code.get(page) ?? "";
  const scripts = [...own.matchAll(/"assets\/([\w-]+)\.js"/gu)].map(([, name]) => name ?? "");
  return [own, ...scripts.map((name) => code.get(name))].join("\n");
}

/**
 * @param {string} whole
 * @param {string} code
 */
async function stylesFor(whole, code) {
  const names = namesIn(code);
  const styles = postcss.parse(whole);
  styles.walkRules((rule) => dropUnspoken(rule, names));
  const made = await transform(styles.toString(), {
    loader: "css",
    minify: true,
    target: "es2022",
    charset: "utf8",
    legalComments: "none",
  });
  return made.code;
}

/**
 * Every word of the code, since each could be the name of a class; the beginnings of names that end in a
 * value; and the names of classes beside which a value is another, as in `again ${again}`.
 *
 * @param {string} code
 */
function namesIn(code) {
  return {
    whole: new Set(code.match(/[\w-]+/gu)),
    begun: code.match(/[\w-]+-(?=\$\{)/gu) ?? [],
    beside: new Set(code.match(/[\w-]+(?= \$\{)/gu)),
  };
}

/**
 * Takes away the selectors that need a class or an id of which nothing speaks, and a rule that has no
 * other.
 *
 * @param {postcss.Rule} rule
 * @param {ReturnType<typeof namesIn>} names
 */
function dropUnspoken(rule, { whole, begun, beside }) {
  const isSpoken = (/** @type {string} */ name) =>
    whole.has(name) || begun.some((start) => name.startsWith(start));
  const isMet = (/** @type {string} */ element) => {
    const [, ...names] = element.split(/[.#]/u).map((part) => part.replace(/[^\w-].*$/u, ""));
    return names.every((name) => isSpoken(name) || names.some((other) => beside.has(other)));
  };
  const kept = rule.selectors.filter((selector) =>
    selector
      .replace(/\[[^\]]*\]/gu, "")
      .split(/[\s>+~(),]+/u)
      .every(isMet),
  );
  if (kept.length === 0) rule.remove();
  else rule.selectors = kept;
}
