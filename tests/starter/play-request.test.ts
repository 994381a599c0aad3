/** The workflow for a request, played step by step in clean clones of a small archive. */
import { existsSync } from "node:fs";
import { mkdtemp, readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Files, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { nothingPlayed, type PlayedJob, playJob } from "./play/play-job.ts";
import { type Begun, beginArchive, oneTile, packageWith, sendRequest } from "./play/request.ts";
import { type Answers, type Asked, readAsked, writeStandIns } from "./play/stand-ins.ts";
import { readWorkflow } from "./workflow-files.ts";

const workflow = readWorkflow("src/starter/github/workflows/tilebook-request.yml");

/** What takes long, and one play is enough to show. */
const slow = ["Check", "Build the request's site"];

const marker = "<!-- tilebook: what this request changes -->";

interface Settings {
  readonly files: Files;
  /** What the main branch gained after the request's branch began. */
  readonly meanwhile?: Files;
  readonly answers?: Answers;
  readonly fork?: boolean;
  readonly title?: string;
  readonly branch?: string;
  /** Steps that are not played. */
  readonly without?: readonly string[];
  /** The comment alone is played, for this summary that the job before it left. */
  readonly summary?: string;
}

interface Played {
  readonly jobs: Readonly<Record<string, PlayedJob>>;
  readonly asked: readonly Asked[];
  readonly artifacts: string;
  readonly clone: string;
  readonly head: string;
}

let begun: Begun;
beforeAll(async () => {
  begun = await beginArchive();
});
afterAll(() => removeFolder(begun.root));

const requests = "repos/eelgate/tests/pulls";

const comments = "repos/eelgate/tests/issues/7/comments";

/** A forge on which no other request is open and nobody has commented. */
const quiet: Answers = {
  [`GET ${requests}`]: [{ number: 7 }],
  [`GET ${comments}`]: [],
  [`POST ${comments}`]: {},
};

let count = 0;

/** Plays all jobs of the workflow for a request, in their order. */
async function play(settings: Settings): Promise<Played> {
  const { fork = false, title = "One tile more", without = [] } = settings;
  count += 1;
  const branch = settings.branch ?? `tile-${count}`;
  const { clone, head } = await sendRequest(begun, branch, settings.files, settings.meanwhile);
  const folder = await mkdtemp(join(begun.root, "run-"));
  const programs = join(folder, "programs");
  const artifacts = join(folder, "artifacts");
  await writeStandIns(programs, { ...quiet, ...settings.answers });
  const event = {
    pull_request: {
      ...{ number: 7, title, user: { login: "robin" }, base: { ref: "main" } },
      head: { sha: head, ref: branch, repo: { full_name: fork ? "robin/tests" : "eelgate/tests" } },
    },
  };
  const github = { event, repository: "eelgate/tests", token: "played", run_id: "77" };
  const env = {
    GITHUB_REPOSITORY: "eelgate/tests",
    GITHUB_SERVER_URL: "https://git.example.org",
    GITHUB_BASE_REF: "main",
    GITHUB_HEAD_REF: branch,
    GITHUB_RUN_ID: "77",
  };
  const jobs: Record<string, PlayedJob> = {};
  if (settings.summary !== undefined) {
    await writeInto(artifacts, { "summary/summary.md": settings.summary });
    jobs.look = { ...nothingPlayed, outcome: "success", outputs: { summary: "success" } };
  }
  for (const [name, job] of Object.entries(workflow.jobs)) {
    if (jobs.look !== undefined && name !== "comment") continue;
    const needs = Object.fromEntries(
      Object.entries(jobs).map(([done, { outcome, outputs }]) => [
        done,
        { result: outcome, outputs },
      ]),
    );
    const machine = { programs, artifacts, checkout: clone, own: join(folder, name), env, without };
    jobs[name] = await playJob(job, { ...machine, context: { github, needs } });
  }
  return { jobs, asked: await readAsked(programs), artifacts, clone, head };
}

/** What was written on the forge. */
const written = ({ asked }: Played) =>
  asked.filter(({ words }) => words.includes("POST") || words.includes("PATCH"));

const outcomes = ({ jobs }: Played) =>
  Object.fromEntries(Object.entries(jobs).map(([name, { outcome }]) => [name, outcome]));

/** The machines of forges run bash. */
const onItsMachine = describe.runIf(process.platform !== "win32");

onItsMachine("a request with a good tile", () => {
  let played: Played;
  beforeAll(async () => {
    played = await play({
      files: await oneTile("AU-002"),
      meanwhile: { "tiles/autumn/AU-010.md": "---\nlayers: [{glaze: limestone-clear}]\n---\n" },
    });
  });

  test("is looked at as it would be once it is merged, and told by what it brings itself", async () => {
    expect(existsSync(join(played.clone, "tiles/autumn/AU-010.md"))).toBe(true);
    expect(played.jobs.look?.page).toMatch(/^1 tile new\.$/mu);
    expect(played.jobs.look?.page).not.toMatch(/^#+ AU-010/mu);
  });

  test("passes, and its summary tells of the tile on the run's page", () => {
    expect(outcomes(played)).toEqual({ claims: "success", look: "success", comment: "success" });
    expect(played.jobs.look?.page).toContain("AU-002");
    expect(played.jobs.look?.page).not.toContain("could not be had");
  });

  test("gets one comment with the same summary, and where its site is", () => {
    const [comment, ...more] = written(played);
    expect(more).toEqual([]);
    expect(comment?.words).toContain(comments);
    expect(comment?.sent).toBe(
      [
        marker,
        played.jobs.look?.page,
        "",
        "---",
        `Of commit ${played.head.slice(0, 7)}. The site as it would be is at the foot of [this run](https://git.example.org/eelgate/tests/actions/runs/77): download it, unpack it, open index.html.`,
        "",
      ].join("\n"),
    );
  });

  test("shows the tile's picture from the commit that was sent", () => {
    expect(played.jobs.look?.page).toContain(
      `https://git.example.org/eelgate/tests/raw/${played.head}/tiles/autumn/AU-002.jpg`,
    );
  });

  test("has its site to look at, with the page of the tile", async () => {
    const page = join(played.artifacts, "site", "tiles", "au-002.html");
    expect(await readFile(page, "utf8")).toContain("AU-002");
  });

  test("comes with the history that dates are read from", async () => {
    expect(existsSync(join(played.clone, ".git", "shallow"))).toBe(false);
  });
});

onItsMachine("the comment", () => {
  const summary = "## What this request changes\n\nOne tile, AU-003.\n";

  test("is written anew where it is: the one that bears the mark and is the workflow's own", async () => {
    const played = await play({
      ...{ files: {}, summary },
      answers: {
        [`GET ${comments}`]: [
          { id: 1, user: { login: "robin" }, body: `${marker}\nby somebody else` },
          { id: 2, user: { login: "github-actions[bot]" }, body: "of another workflow" },
          { id: 3, user: { login: "github-actions[bot]" }, body: `${marker}\nof the last push` },
        ],
        "PATCH repos/eelgate/tests/issues/comments/3": {},
      },
    });
    expect(written(played).map(({ words }) => words.at(4))).toEqual([
      "repos/eelgate/tests/issues/comments/3",
    ]);
    expect(written(played)[0]?.sent).toMatch(
      new RegExp(`^${marker}\n${summary}\n\n---\nOf commit `, "u"),
    );
  });

  test("that cannot be written fails nothing, and is told", async () => {
    const answers = { [`GET ${comments}`]: undefined };
    const played = await play({ files: {}, summary, answers });
    expect(outcomes(played).comment).toBe("success");
    expect(played.jobs.comment?.said).toContain(
      "::warning::The comment could not be written. The summary is on the page of this run.",
    );
  });

  test("is not written for a request from a fork, whose summary is on the run's page as any other's", async () => {
    const played = await play({ files: {}, summary, fork: true });
    expect(outcomes(played).comment).toBe("skipped");
    expect(played.asked).toEqual([]);
    expect(JSON.stringify(workflow.jobs.look)).not.toMatch(/head\.repo|fork/u);
  });

  test("holds what the summary holds, of which no shell reads a word", async () => {
    const harm =
      "$(touch pwned) `touch pwned` \"; touch pwned; #\n'; touch pwned; '\n@body=@/etc/hostname\n";
    const played = await play({ files: {}, summary: harm });
    expect(written(played)[0]?.sent).toContain(`${marker}\n${harm}\n\n---\n`);
    expect(existsSync(join(played.artifacts, "../comment/empty/pwned"))).toBe(false);
  });
});

onItsMachine("a request with a broken tile", () => {
  let played: Played;
  beforeAll(async () => {
    const record = "---\nlayers:\n  - {glaze: tidewrack, coats: 2}\n  - {glaze: nowhere}\n---\n";
    played = await play({ files: await oneTile("AU-004", record) });
  });

  test("fails, and what is wrong is told on its line", () => {
    expect(outcomes(played)).toMatchObject({ look: "failure" });
    expect(played.jobs.look?.steps.get("Check")).toBe("failure");
    expect(played.jobs.look?.said).toMatch(
      /^::error file=tiles\/autumn\/AU-004\.md,line=4,col=\d+,title=[\w-]+::There is no glaze “nowhere”/mu,
    );
  });

  test("has a summary and a comment nevertheless", () => {
    expect(played.jobs.look?.page).toContain("AU-004");
    expect(written(played)[0]?.sent).toContain("AU-004");
  });

  test("has its site, without the broken tile", () => {
    expect(existsSync(join(played.artifacts, "site", "tiles", "au-001.html"))).toBe(true);
    expect(existsSync(join(played.artifacts, "site", "tiles", "au-004.html"))).toBe(false);
  });
});

onItsMachine("two requests that claim one code", () => {
  const earlier = {
    [`GET ${requests}`]: [{ number: 3 }, { number: 9 }, { number: 7 }],
    [`GET ${requests}/3/files`]: [
      { status: "added", filename: "tiles/autumn/AU-005.md" },
      { status: "modified", filename: "tiles/autumn/AU-001.md" },
      { status: "added", filename: "tiles/autumn/AU-\t1.md\nx" },
    ],
  };

  test("the later one is told of the earlier one, and of a code that is free", async () => {
    const played = await play({
      files: await oneTile("AU-005"),
      answers: earlier,
      without: slow,
    });
    expect(await readFile(join(played.artifacts, "claimed", "claimed.txt"), "utf8")).toBe(
      "3\ttiles/autumn/AU-005.md\n",
    );
    expect(played.jobs.look?.page).toContain(
      "**AU-005** is in request 3 as well, which came first. The next free code is AU-002",
    );
  });
});

onItsMachine("a request that means harm, sent while the open requests cannot be listed", () => {
  let played: Played;
  const evil = "touch pwned";
  const title = `$(${evil}) \`${evil}\` "; ${evil}; #`;
  beforeAll(async () => {
    played = await play({
      title,
      branch: `$(${evil.replace(" ", "$" + "{IFS}")})`,
      files: {
        ...(await oneTile("AU-006")),
        [`tiles/autumn/$(${evil}).md`]: "---\nlayers: [{glaze: tidewrack}]\n---\n",
        "tiles/autumn/AU-007.md": `---\nlayers: [{glaze: tidewrack}]\n---\n${title} \${{ github.token }}\n`,
        "package.json": await packageWith(begun, {
          scripts: { preinstall: evil, install: evil, postinstall: evil, prepare: evil },
        }),
        ".cache/pictures/made/aa/planted/record.json": "{}",
      },
      answers: { [`GET ${requests}`]: undefined },
      without: slow,
    });
  });

  test("runs nothing where something may be written, whatever its names and words are", () => {
    expect(played.jobs.comment?.outcome).toBe("success");
    const run = join(played.artifacts, "..");
    const folders = ["claims/empty", "claims/temp", "comment/empty", "comment/temp", "look/temp"];
    for (const folder of folders)
      expect(existsSync(join(run, folder, "pwned")), folder).toBe(false);
    expect(existsSync(join(played.clone, "pwned"))).toBe(false);
  });

  test("puts nothing in the place of what is remembered", () => {
    expect(existsSync(join(played.clone, ".cache/pictures/made/aa/planted"))).toBe(false);
  });

  test("is told first that it changes what runs", () => {
    expect(played.jobs.look?.page).toMatch(
      /changes what runs when the site is published\*\*:\n\n(?:- .*\n)*- `package\.json` \(changed\)/u,
    );
  });

  test("is told that nobody looked for another request with the same code, and does not fail for that", () => {
    expect(outcomes(played)).toEqual({ claims: "success", look: "success", comment: "success" });
    expect(written(played)).toHaveLength(1);
    expect(written(played)[0]?.sent).toContain(
      "The list of open requests could not be had this time: whether another one claims the same code was not looked at.",
    );
  });
});
