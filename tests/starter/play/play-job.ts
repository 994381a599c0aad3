/** Plays a job of a workflow as its forge would: the steps in order, each script with bash. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { cp, mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Job, Step } from "../workflow-files.ts";
import { type Context, evaluate, fill } from "./expressions.ts";

/** The machine that a job runs on. */
export interface Machine {
  /** Programs that come first in the path. */
  readonly programs: string;
  /** Where artifacts are kept from job to job. */
  readonly artifacts: string;
  /** What is checked out for a job that asks for it. */
  readonly checkout: string;
  /** A folder of this job's own, empty. */
  readonly own: string;
  readonly env: Readonly<Record<string, string>>;
  readonly context: Context;
  /** Steps that are not played, by name. */
  readonly without?: readonly string[];
}

type Outcome = "failure" | "skipped" | "success";

export interface PlayedJob {
  readonly outcome: Outcome;
  /** By the step's name, its id, its action or its first line. */
  readonly steps: ReadonlyMap<string, Outcome>;
  readonly outputs: Readonly<Record<string, string>>;
  /** All that its scripts printed. */
  readonly said: string;
  /** What it wrote for the run's page. */
  readonly page: string;
}

interface Playing extends Machine {
  readonly folder: string;
  readonly state: Record<string, { outcome: Outcome; outputs: Record<string, string> }>;
  readonly said: string[];
  failed: boolean;
}

export const nothingPlayed: PlayedJob = {
  ...{ outcome: "skipped", steps: new Map(), outputs: {}, said: "", page: "" },
};

/** Plays a job whose needs have been played. */
export async function playJob(job: Job, machine: Machine): Promise<PlayedJob> {
  if (job.if !== undefined && !evaluate(unwrapped(job.if), machine.context)) return nothingPlayed;
  const checksOut = job.steps.some(({ uses = "" }) => uses.startsWith("actions/checkout@"));
  const temp = join(machine.own, "temp");
  await mkdir(temp, { recursive: true });
  await mkdir(join(machine.own, "empty"), { recursive: true });
  await writeFile(join(machine.own, "page"), "");
  const folder = checksOut ? machine.checkout : join(machine.own, "empty");
  const state: Playing["state"] = {};
  const context = { ...machine.context, runner: { temp }, steps: state };
  const playing: Playing = { ...machine, context, folder, state, said: [], failed: false };
  const steps = new Map<string, Outcome>();
  for (const step of job.steps) {
    const outcome = await playStep(step, job, playing);
    steps.set(step.name ?? step.id ?? step.uses?.split("@")[0] ?? step.run ?? "", outcome);
    playing.failed ||= outcome === "failure";
  }
  const outputs = Object.entries(job.outputs ?? {}).map(([name, text]) => [
    name,
    fill(text, context),
  ]);
  return {
    outcome: playing.failed ? "failure" : "success",
    steps,
    outputs: Object.fromEntries(outputs) as Readonly<Record<string, string>>,
    said: playing.said.join(""),
    page: await readFile(join(machine.own, "page"), "utf8"),
  };
}

async function playStep(step: Step, job: Job, playing: Playing): Promise<Outcome> {
  const outputs: Record<string, string> = {};
  const outcome = await outcomeOf(step, job, playing, outputs);
  if (step.id !== undefined) playing.state[step.id] = { outcome, outputs };
  return outcome;
}

async function outcomeOf(
  step: Step,
  job: Job,
  playing: Playing,
  outputs: Record<string, string>,
): Promise<Outcome> {
  if (playing.without?.includes(step.name ?? "") || !isToRun(step, playing)) return "skipped";
  const isDone =
    step.run === undefined
      ? await useAction(step, playing, outputs)
      : await runScript(step.run, { ...job.env, ...step.env }, playing, outputs);
  return isDone ? "success" : "failure";
}

/** A step that asks for no state runs where none failed before it. */
function isToRun(step: Step, { context, failed }: Playing): boolean {
  if (step.if === undefined) return !failed;
  const text = unwrapped(step.if);
  const asksState = /\b(?:always|cancelled|failure|success)\(/u.test(text);
  return (asksState || !failed) && Boolean(evaluate(text, context, failed));
}

function unwrapped(text: string): string {
  return /^\$\{\{(.*)\}\}$/su.exec(text.trim())?.[1] ?? text;
}

async function runScript(
  script: string,
  env: Readonly<Record<string, string>>,
  playing: Playing,
  outputs: Record<string, string>,
): Promise<boolean> {
  const { own, programs, folder, context } = playing;
  const [file, output] = [join(own, "script.sh"), join(own, "output")];
  await writeFile(file, script);
  await writeFile(output, "");
  const filled = Object.entries(env).map(([name, text]) => [name, fill(String(text), context)]);
  const code = await new Promise<number | null>((resolve, reject) => {
    const child = spawn("bash", ["--noprofile", "--norc", "-eo", "pipefail", file], {
      cwd: folder,
      env: {
        PATH: `${programs}:${process.env.PATH}`,
        HOME: own,
        CI: "true",
        RUNNER_TEMP: join(own, "temp"),
        GITHUB_OUTPUT: output,
        GITHUB_STEP_SUMMARY: join(own, "page"),
        ...playing.env,
        ...Object.fromEntries(filled),
      },
    });
    for (const stream of [child.stdout, child.stderr])
      stream.on("data", (part) => playing.said.push(String(part)));
    child.once("error", reject);
    child.once("close", resolve);
  });
  for (const line of (await readFile(output, "utf8")).split("\n")) {
    const [, name, value] = /^([^=]+)=(.*)$/u.exec(line) ?? [];
    if (name !== undefined) outputs[name] = value ?? "";
  }
  return code === 0;
}

/** Actions are not run: what they hand on is handed on, and of the rest it is enough that they are named. */
async function useAction(
  { uses = "", with: words = {} }: Step,
  { artifacts, folder, context }: Playing,
  outputs: Record<string, string>,
): Promise<boolean> {
  const word = (name: string) => fill(String(words[name] ?? ""), context);
  const kept = join(artifacts, word("name") || "github-pages");
  switch (/^actions\/([\w/-]+)@/u.exec(uses)?.[1]) {
    case "upload-artifact":
    case "upload-pages-artifact":
      return keep(join(folder, word("path")), word("path"), kept);
    case "download-artifact":
      if (!existsSync(kept)) return false;
      await cp(kept, word("path"), { recursive: true });
      return true;
    case "deploy-pages":
      outputs.page_url = "https://robin.example.org/tiles/";
      return existsSync(kept);
    default:
      return true;
  }
}

async function keep(inFolder: string, path: string, kept: string): Promise<boolean> {
  const from = path.startsWith("/") ? path : inFolder;
  if (!existsSync(from)) return true;
  await mkdir(kept, { recursive: true });
  const isFile = /\.\w+$/u.test(path);
  await cp(from, isFile ? join(kept, path.split("/").at(-1) ?? "") : kept, { recursive: true });
  return true;
}
