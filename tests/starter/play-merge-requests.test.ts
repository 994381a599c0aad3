/** The second forge's file for a merge request, its scripts played against a small archive and a forge that answers. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdtemp, readFile, writeFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { type Begun, beginArchive, oneTile, sendRequest } from "./play/request.ts";
import { writeStandIns } from "./play/stand-ins.ts";
import { gitlabJobs, readGitlab } from "./workflow-files.ts";

const file = "src/starter/gitlab-ci.yml";

const jobs = gitlabJobs(file);

const marker = "<!-- tilebook: what this request changes -->";

const project = "/api/v4/projects/5";

interface Heard {
  readonly method: string;
  readonly address: string;
  readonly token: string | undefined;
  readonly body: string | undefined;
}

/** By method and address: the pages of an answer. What has none is refused. */
let answers: Readonly<Record<string, readonly unknown[]>> = {};
const heard: Heard[] = [];
let forge: Server;
let begun: Begun;

beforeAll(async () => {
  begun = await beginArchive();
  forge = createServer((request, response) => {
    let sent = "";
    request.on("data", (part) => {
      sent += part;
    });
    request.on("end", () => {
      const { pathname, searchParams } = new URL(request.url ?? "", "http://localhost");
      const [method = "", token] = [request.method, request.headers["private-token"]];
      const body = sent === "" ? undefined : (JSON.parse(sent) as { body: string }).body;
      heard.push({ method, address: request.url ?? "", token: token?.toString(), body });
      const pages = answers[`${method} ${pathname}`];
      const page = Number(searchParams.get("page") ?? 1);
      const next = pages && page < pages.length ? String(page + 1) : "";
      response.writeHead(pages ? 200 : 401, { "x-next-page": next });
      response.end(JSON.stringify(pages?.[page - 1] ?? {}));
    });
  });
  await new Promise<void>((resolve) => forge.listen(0, "127.0.0.1", resolve));
});
afterEach(() => {
  heard.length = 0;
});
afterAll(async () => {
  forge.close();
  await removeFolder(begun.root);
});

/** Plays the script of a job in a folder, and gives its exit code and what it printed. */
async function play(name: string, cwd: string, env: Readonly<Record<string, string>> = {}) {
  const programs = await mkdtemp(join(begun.root, "programs-"));
  await writeStandIns(programs, {});
  const { port } = forge.address() as AddressInfo;
  const set = { ...(readGitlab(file).variables as object), ...jobs[name]?.variables };
  const given = Object.entries(set).map(([key, text]) => [
    key,
    String(text).replaceAll("$CI_PROJECT_DIR", cwd),
  ]);
  const script = join(programs, "script.sh");
  await writeFile(script, (jobs[name]?.script ?? []).join("\n"));
  const child = spawn("bash", ["--noprofile", "--norc", "-eo", "pipefail", script], {
    cwd,
    env: {
      PATH: `${programs}:${process.env.PATH}`,
      HOME: programs,
      CI: "true",
      CI_API_V4_URL: `http://127.0.0.1:${port}/api/v4`,
      CI_MERGE_REQUEST_PROJECT_ID: "5",
      CI_MERGE_REQUEST_IID: "7",
      CI_MERGE_REQUEST_SOURCE_PROJECT_URL: "https://git.example.org/robin/tests",
      CI_COMMIT_SHA: "0123456789abcdef0123456789abcdef01234567",
      CI_PIPELINE_URL: "https://git.example.org/robin/tests/-/pipelines/77",
      ...Object.fromEntries(given),
      ...env,
    },
  });
  let said = "";
  for (const stream of [child.stdout, child.stderr])
    stream.on("data", (part) => {
      said += part;
    });
  const code = await new Promise((resolve) => child.once("close", resolve));
  return { code, said };
}

const empty = () => mkdtemp(join(begun.root, "empty-"));

/** The machines of forges run bash. */
const onItsMachine = describe.runIf(process.platform !== "win32");

onItsMachine("the files that open, earlier requests add", () => {
  const requests = `${project}/merge_requests`;
  const open = {
    [`GET ${requests}`]: [[{ iid: 3 }], [{ iid: 9 }, { iid: 7 }]],
    [`GET ${requests}/3/diffs`]: [
      [{ new_file: true, new_path: "tiles/autumn/AU-005.md" }, { new_path: "studio.yaml" }],
      [{ renamed_file: true, new_path: "tiles/autumn/AU-006.md" }],
    ],
  };

  test("are listed, page by page, without a token where anyone may read them", async () => {
    answers = open;
    const folder = await empty();
    expect(await play("claims", folder)).toEqual({ code: 0, said: "" });
    expect(await readFile(join(folder, ".cache/request/claimed.txt"), "utf8")).toBe(
      "3\ttiles/autumn/AU-005.md\n3\ttiles/autumn/AU-006.md\n",
    );
    expect(heard.map(({ token }) => token)).toEqual(heard.map(() => undefined));
  });

  test("are not listed where the forge refuses, which is told and fails nothing", async () => {
    answers = { [`GET ${requests}`]: open[`GET ${requests}`] ?? [] };
    const folder = await empty();
    expect(await play("claims", folder)).toEqual({
      code: 0,
      said: "Open requests could not be listed (the forge answered 401), so nobody looked whether two claim one code.\n",
    });
    expect(existsSync(join(folder, ".cache/request/claimed.txt"))).toBe(false);
  });
});

onItsMachine("a request with a broken tile", () => {
  let clone = "";
  let played: Awaited<ReturnType<typeof play>>;
  beforeAll(async () => {
    const record = "---\nlayers:\n  - {glaze: tidewrack, coats: 2}\n  - {glaze: nowhere}\n---\n";
    const request = await sendRequest(begun, "broken", {
      ...(await oneTile("AU-004", record)),
      ".cache/pictures/made/aa/planted/record.json": "{}",
    });
    clone = request.clone;
    played = await play("check", clone, { CI_MERGE_REQUEST_DIFF_BASE_SHA: "origin/main" });
  });

  test("fails, and says in the log what is wrong", () => {
    expect(played.code).toBe(1);
    expect(played.said).toContain("There is no glaze “nowhere”");
  });

  test("has a report by which the forge shows it on its line", async () => {
    const report = JSON.parse(
      await readFile(join(clone, ".cache/request/code-quality.json"), "utf8"),
    );
    expect(report).toContainEqual(
      expect.objectContaining({
        description: expect.stringContaining("There is no glaze “nowhere”"),
        location: expect.objectContaining({ path: "tiles/autumn/AU-004.md" }),
      }),
    );
  });

  test("has a summary, which says that open requests were not looked at, and a site to look at", async () => {
    const summary = await readFile(join(clone, ".cache/request/summary.md"), "utf8");
    expect(summary).toContain("AU-004");
    expect(summary).toContain("The list of open requests could not be had this time");
    expect(existsSync(join(clone, "site/tiles/au-001.html"))).toBe(true);
    expect(existsSync(join(clone, "site/tiles/au-004.html"))).toBe(false);
  });

  test("that is merged nevertheless is published without it, and nothing planted is believed", async () => {
    expect(await play("pages", clone)).toMatchObject({ code: 0 });
    expect(existsSync(join(clone, "public/tiles/au-001.html"))).toBe(true);
    expect(existsSync(join(clone, "public/tiles/au-004.html"))).toBe(false);
    expect(existsSync(join(clone, ".cache/pictures/made/aa/planted"))).toBe(false);
  });
});

onItsMachine("the note", () => {
  const notes = `${project}/merge_requests/7/notes`;
  const TILEBOOK_TOKEN = "played";
  const summary = "One tile. $(touch pwned) `touch pwned`\n";
  const text = `${marker}\n${summary}\n\n---\nOf commit 01234567. The site as it would be is among the artifacts of [this pipeline](https://git.example.org/robin/tests/-/pipelines/77).\n`;

  async function withSummary(): Promise<string> {
    const folder = await empty();
    await writeInto(folder, { ".cache/request/summary.md": summary });
    return folder;
  }

  test("is written with what the summary holds", async () => {
    answers = { "GET /api/v4/user": [{ id: 1 }], [`GET ${notes}`]: [[]], [`POST ${notes}`]: [{}] };
    const folder = await withSummary();
    expect(await play("note", folder, { TILEBOOK_TOKEN })).toEqual({ code: 0, said: "" });
    expect(heard.at(-1)).toEqual({ method: "POST", address: notes, token: "played", body: text });
    expect(existsSync(join(folder, "pwned"))).toBe(false);
  });

  test("gives no command, whatever the summary holds", async () => {
    answers = { "GET /api/v4/user": [{ id: 1 }], [`GET ${notes}`]: [[]], [`POST ${notes}`]: [{}] };
    const folder = await empty();
    const harm = "/close\n \t/assign me\r/label ~done\r\n/merge\nsee a/b\n";
    await writeInto(folder, { ".cache/request/summary.md": harm });
    expect(await play("note", folder, { TILEBOOK_TOKEN })).toMatchObject({ code: 0 });
    const escaped = "\\/close\n \t\\/assign me\r\\/label ~done\r\n\\/merge\nsee a/b\n";
    expect(heard.at(-1)?.body).toContain(`${marker}\n${escaped}\n\n---`);
  });

  test("is written anew where it is: the one that bears the mark and is the token's own", async () => {
    answers = {
      "GET /api/v4/user": [{ id: 1 }],
      [`GET ${notes}`]: [
        [{ id: 11, author: { id: 2 }, body: `${marker}\nby somebody else` }],
        [
          { id: 12, author: { id: 1 }, body: "of something else" },
          { id: 13, author: { id: 1 }, body: `${marker}\nof the last push` },
        ],
      ],
      [`PUT ${notes}/13`]: [{}],
    };
    expect(await play("note", await withSummary(), { TILEBOOK_TOKEN })).toMatchObject({ code: 0 });
    expect(heard.at(-1)).toMatchObject({ method: "PUT", address: `${notes}/13`, body: text });
  });

  test("is left out, and this is told, where no token is given or no summary was made", async () => {
    const told = "No note: there is no summary, or no TILEBOOK_TOKEN to write it with.\n";
    expect(await play("note", await withSummary())).toEqual({ code: 0, said: told });
    expect(await play("note", await empty(), { TILEBOOK_TOKEN })).toEqual({ code: 0, said: told });
    expect(heard).toEqual([]);
  });

  test("is never written for a request from a fork", () => {
    expect(jobs.note?.rules?.map((rule) => rule.if)).toEqual([
      '$CI_PIPELINE_SOURCE == "merge_request_event" && $CI_MERGE_REQUEST_SOURCE_PROJECT_ID == $CI_MERGE_REQUEST_PROJECT_ID',
    ]);
  });
});
