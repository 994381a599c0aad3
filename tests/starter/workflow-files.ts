/** The files that forges read: those of a new archive, and this repository's own. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import { project } from "../house/files.ts";

/** A step of a job, as a workflow file writes it. */
export interface Step {
  readonly id?: string;
  readonly name?: string;
  readonly if?: string;
  readonly uses?: string;
  readonly run?: string;
  readonly with?: Readonly<Record<string, unknown>>;
  readonly env?: Readonly<Record<string, string>>;
}

export interface Job {
  readonly if?: string;
  readonly needs?: string;
  readonly permissions?: Readonly<Record<string, string>>;
  readonly env?: Readonly<Record<string, string>>;
  readonly outputs?: Readonly<Record<string, string>>;
  readonly steps: readonly Step[];
}

export interface Workflow {
  readonly on: Readonly<Record<string, unknown>>;
  readonly permissions?: unknown;
  readonly concurrency: Readonly<Record<string, unknown>>;
  readonly jobs: Readonly<Record<string, Job>>;
}

export const read = (file: string): string => readFileSync(join(project, file), "utf8");

/** The workflow files of the forge that has a file for each, from the project's root. */
export const githubFiles: readonly string[] = [
  "src/starter/github/workflows",
  ".github/workflows",
].flatMap((folder) =>
  readdirSync(join(project, folder))
    .sort()
    .map((name) => `${folder}/${name}`),
);

/** The files of the forge that has one for all. */
export const gitlabFiles: readonly string[] = ["src/starter/gitlab-ci.yml", ".gitlab-ci.yml"];

export function readWorkflow(file: string): Workflow {
  return parse(read(file)) as Workflow;
}

/** A job of that one file, with what it extends. */
export interface GitlabJob {
  readonly script?: readonly string[];
  readonly needs?: readonly string[];
  readonly rules?: readonly { readonly if: string }[];
  readonly environment?: { readonly name: string };
  readonly variables?: Readonly<Record<string, string>>;
  readonly cache?: { readonly policy?: string };
  readonly interruptible?: boolean;
  readonly resource_group?: string;
}

export function readGitlab(file: string): Readonly<Record<string, unknown>> {
  return parse(read(file), { merge: true }) as Readonly<Record<string, unknown>>;
}

/** The jobs of that file that run something. */
export function gitlabJobs(file: string): Readonly<Record<string, GitlabJob>> {
  const jobs = Object.entries(readGitlab(file)).filter(
    ([, value]) => typeof value === "object" && value !== null && "script" in value,
  );
  return Object.fromEntries(jobs) as Readonly<Record<string, GitlabJob>>;
}
