/** What a request brings is somebody else's: it gets no right, no secret, and no say in what is run beside it. */
import { describe, expect, test } from "vitest";
import {
  githubFiles,
  gitlabFiles,
  gitlabJobs,
  type Job,
  read,
  readWorkflow,
} from "./workflow-files.ts";

const workflows = githubFiles.map((file) => ({ file, text: read(file), ...readWorkflow(file) }));

const jobs = workflows.flatMap((workflow) =>
  Object.entries(workflow.jobs).map(([name, job]) => ({ ...workflow, name, job })),
);

const uses = ({ steps }: Job) => steps.flatMap((step) => step.uses ?? []);

const runs = ({ steps }: Job) => steps.flatMap((step) => step.run ?? []);

/** The jobs that may write anything. */
const mayWrite = jobs.filter(({ job }) => Object.values(job.permissions ?? {}).includes("write"));

describe("the workflows of the forge that has a file for each", () => {
  test("start with no rights, and give each job by name what it needs", () => {
    expect(workflows.map(({ permissions }) => permissions)).toEqual(workflows.map(() => ({})));
    const given = jobs.map(({ name, job }) => [name, job.permissions]);
    expect(Object.fromEntries(given)).toEqual({
      build: { contents: "read" },
      claims: { "pull-requests": "read" },
      comment: { "pull-requests": "write" },
      deploy: { pages: "write", "id-token": "write" },
      look: { contents: "read" },
      tests: { contents: "read" },
    });
  });

  test("run on a request as the one who sends it, and never with the rights of the repository", () => {
    const events = workflows.flatMap(({ on }) => Object.keys(on));
    expect([...new Set(events)].sort()).toEqual(["pull_request", "push", "workflow_dispatch"]);
  });

  test("name no secret", () => {
    expect(workflows.filter(({ text }) => /\bsecrets\b\s*[.[]/u.test(text))).toEqual([]);
  });

  test("put nothing of the event into a script: it comes as a variable, which no shell reads as a command", () => {
    expect(jobs.flatMap(({ job }) => runs(job)).filter((run) => run.includes("${{"))).toEqual([]);
  });

  test("take over no key for the repository with its files", () => {
    const kept = jobs.flatMap(({ job }) =>
      job.steps.filter(({ uses = "" }) => uses.startsWith("actions/checkout@")),
    );
    expect(kept.length).toBeGreaterThan(4);
    for (const step of kept) expect(step.with?.["persist-credentials"]).toBe(false);
  });

  test("run nothing of the repository where they may write", () => {
    expect(mayWrite.length).toBeGreaterThan(1);
    for (const { job } of mayWrite) {
      expect(uses(job).filter((name) => name.startsWith("actions/checkout@"))).toEqual([]);
      expect(runs(job).filter((run) => /\b(?:npx|npm|node|git)\b/u.test(run))).toEqual([]);
    }
  });

  test("install packages without running what these would run then", () => {
    const installs = jobs
      .flatMap(({ job }) => runs(job))
      .filter((run) => /\bnpm (?:ci|i|install)\b/u.test(run));
    expect(new Set(installs)).toEqual(new Set(["npm ci --ignore-scripts"]));
  });

  test("write what is kept from run to run on the main branch alone", () => {
    const save = jobs.filter(({ job }) =>
      uses(job).some((name) => /^actions\/cache(\/save)?@/u.test(name)),
    );
    expect(new Set(save.map(({ file }) => file.split("/").at(-1)))).toEqual(
      new Set(["tilebook-publish.yml"]),
    );
    const nodes = jobs.flatMap(({ job }) =>
      job.steps.filter(({ uses = "" }) => uses.startsWith("actions/setup-node@")),
    );
    for (const step of nodes) {
      expect(step.with).toMatchObject({ "package-manager-cache": false });
      expect(step.with).not.toHaveProperty("cache");
    }
  });

  test("end a request's older run, and never cut publishing short", () => {
    const cut = workflows.map(({ file, concurrency }) => [
      file.split("/").at(-1),
      concurrency["cancel-in-progress"],
    ]);
    expect(Object.fromEntries(cut)).toEqual({
      "tests.yml": true,
      "tilebook-publish.yml": false,
      "tilebook-request.yml": true,
    });
  });
});

describe("the actions", () => {
  const named = workflows.flatMap(({ text }) =>
    [...text.matchAll(/^\s*-? *uses: (.*)$/gmu)].map(([, name = ""]) => name),
  );

  test("are each named by a whole commit, with the version beside it", () => {
    expect(named.length).toBeGreaterThan(10);
    const pinned = /^[\w-]+\/[\w/-]+@[0-9a-f]{40} # v\d+\.\d+\.\d+$/u;
    expect(named.filter((name) => !pinned.test(name))).toEqual([]);
  });

  test("are those that the docs name, each in one version", () => {
    const rows = read("docs/requests.md").matchAll(
      /^\| `([\w/-]+)` \| (v[\d.]+) \| `(\w{40})` \|$/gmu,
    );
    const told = [...rows].map(([, action, version, commit]) => `${action}@${commit} # ${version}`);
    // An action may have parts of its own: those of a cache are one each for fetching and for keeping.
    const whole = named.map((name) => name.replace(/^(actions\/[\w-]+)[^@]*/u, "$1"));
    expect([...new Set(whole)].sort()).toEqual(told.sort());
  });
});

describe.each(gitlabFiles)("%s", (file) => {
  const all = Object.entries(gitlabJobs(file));

  test("runs what a request brings where no token is given", () => {
    const withToken = all.filter(([, { environment }]) => environment !== undefined);
    expect(withToken.map(([name]) => name)).toEqual(["claims", "note"]);
    for (const [name, { script = [], variables }] of withToken) {
      expect(variables, name).toMatchObject({ GIT_STRATEGY: "none" });
      expect(script.filter((line) => /\b(?:npx|npm|git)\b/u.test(line))).toEqual([]);
    }
  });

  test("writes what is kept from run to run on the default branch alone", () => {
    const keeping = all.filter(([, { cache }]) => cache !== undefined && cache.policy !== "pull");
    expect(keeping.map(([name]) => name)).toEqual(["pages"]);
  });

  test("publishes one at a time, and never cuts it short", () => {
    const pages = Object.fromEntries(all).pages;
    expect(pages).toMatchObject({ resource_group: "pages", interruptible: false });
    expect(pages?.rules).toEqual([{ if: "$CI_COMMIT_BRANCH == $CI_DEFAULT_BRANCH" }]);
  });
});
