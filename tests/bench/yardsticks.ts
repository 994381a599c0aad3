/** What somebody could have instead, over the same Markdown files: other generators, and a bare loop. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { measureRun, type Run } from "./measured-run.ts";

const project = fileURLToPath(new URL("../../", import.meta.url));
const modules = join(project, "node_modules");

export interface Yardstick {
  readonly name: string;
  /** Each program that it takes, one after the other. */
  readonly runs: readonly Run[];
}

/** Runs all yardsticks over an archive, each in a folder of its own. */
export async function runYardsticks(
  archive: string,
  folder: string,
): Promise<readonly Yardstick[]> {
  return [
    ...(hasHugo() ? [await runHugo(archive, join(folder, "hugo"))] : []),
    await runEleventy(archive, join(folder, "eleventy")),
    await runLoop(archive, join(folder, "loop")),
  ];
}

function hasHugo(): boolean {
  return spawnSync("hugo", ["version"]).status === 0;
}

function writeFiles(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
}

function copyRecords(archive: string, folder: string): void {
  for (const part of ["tiles", "recipes"])
    cpSync(join(archive, part), join(folder, part), { recursive: true });
}

const head = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Tests</title></head><body>`;

/** A page for each record with all its fields, and lists of a hundred. */
async function runHugo(archive: string, folder: string): Promise<Yardstick> {
  const single = `${head}<h1>{{ .File.ContentBaseName }}</h1><dl>{{ range $key, $value := .Params }}<dt>{{ $key }}</dt><dd>{{ jsonify $value }}</dd>{{ end }}</dl>{{ .Content }}</body></html>`;
  const list = `${head}<ul>{{ range .Paginator.Pages }}<li><a href="{{ .RelPermalink }}">{{ .File.ContentBaseName }}</a></li>{{ end }}</ul></body></html>`;
  writeFiles(folder, {
    "config.toml":
      'baseURL = "https://eelgate.example/"\npaginate = 100\ndisableKinds = ["taxonomy", "term", "home"]\n',
    "layouts/_default/single.html": single,
    "layouts/_default/list.html": list,
  });
  copyRecords(archive, join(folder, "content"));
  const pages = await measureRun(folder, "hugo", "--quiet");
  const words = await measureRun(folder, join(modules, ".bin/pagefind"), "--site", "public");
  return { name: "Hugo + Pagefind", runs: [pages, words] };
}

/** The ordinary way: each Markdown file is a template, and a layout is put around it. */
async function runEleventy(archive: string, folder: string): Promise<Yardstick> {
  writeFiles(folder, {
    "eleventy.config.mjs": `export default (config) => {
  config.addGlobalData("layout", "page.njk");
  config.setQuietMode(true);
  return { dir: { input: "content" } };
};\n`,
    "content/_includes/page.njk": `${head}<h1>{{ page.fileSlug }}</h1><dl><dt>layers</dt><dd>{{ layers | dump }}</dd><dt>result</dt><dd>{{ result | dump }}</dd></dl>{{ content | safe }}</body></html>`,
  });
  copyRecords(archive, join(folder, "content"));
  const eleventy = join(modules, "@11ty/eleventy/cmd.cjs");
  return { name: "Eleventy", runs: [await measureRun(folder, process.execPath, eleventy)] };
}

/** Nothing but to read, parse, render and write each. */
async function runLoop(archive: string, folder: string): Promise<Yardstick> {
  const from = (name: string) => JSON.stringify(join(modules, name));
  writeFiles(folder, {
    "loop.mjs": `import fs from "node:fs";
import { createRequire } from "node:module";
import { join, dirname } from "node:path";
const require = createRequire(import.meta.url);
const matter = require(${from("gray-matter")});
const MarkdownIt = require(${from("markdown-it")});
const markdown = new (MarkdownIt.default ?? MarkdownIt)();
const [archive] = process.argv.slice(2);
for (const part of ["tiles", "recipes"])
  for (const name of fs.readdirSync(join(archive, part), { recursive: true })) {
    if (!name.endsWith(".md")) continue;
    const { data, content } = matter(fs.readFileSync(join(archive, part, name), "utf8"));
    const fields = Object.entries(data).map(([key, value]) => \`<dt>\${key}</dt><dd>\${JSON.stringify(value)}</dd>\`);
    const out = join("out", part, name.replace(/md$/, "html"));
    fs.mkdirSync(dirname(out), { recursive: true });
    fs.writeFileSync(out, \`${head}<h1>\${name}</h1><dl>\${fields.join("")}</dl>\${markdown.render(content)}</body></html>\`);
  }
`,
  });
  return {
    name: "bare loop",
    runs: [await measureRun(folder, process.execPath, "loop.mjs", archive)],
  };
}
