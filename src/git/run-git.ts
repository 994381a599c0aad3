/**
 * Runs git on a repository that strangers may have written: it reads, asks nobody, writes nothing, and
 * starts no other program that a setting of the repository might name.
 */
import { execFile } from "node:child_process";
import { hasCode, MachineError } from "../disk/machine-error.ts";

/** More than the history of any archive: what goes beyond is refused, not cut. */
const mostOutput = 1024 ** 3;

const settings = ["core.fsmonitor=false", "log.showSignature=false", "core.quotePath=false"];

/** What git answered: its output, or what it said where it could not. */
export type GitAnswer =
  | { readonly ok: true; readonly output: Buffer }
  /** `missing` where this machine has no git. */
  | { readonly ok: false; readonly why: "missing" | "refused"; readonly said: string };

/**
 * @param dir where git is run
 * @param args nothing in them that a stranger wrote may stand where an option may: put
 *   `--end-of-options` or `--` before it
 * @param input what git reads
 * @throws MachineError where git could not be run for a reason of the machine
 */
export function runGit(
  dir: string,
  args: readonly string[],
  input?: string | Uint8Array,
): Promise<GitAnswer> {
  return new Promise((resolve, reject) => {
    const child = execFile(
      "git",
      ["--no-pager", ...settings.flatMap((setting) => ["-c", setting]), ...args],
      { cwd: dir, encoding: "buffer", maxBuffer: mostOutput, env: quietly(process.env) },
      (error, output, complaint) => {
        const said = complaint.toString("utf8").trim();
        if (!error) resolve({ ok: true, output });
        else if (hasCode(error, "ENOENT")) resolve({ ok: false, why: "missing", said });
        else if (typeof error.code === "number") resolve({ ok: false, why: "refused", said });
        else reject(new MachineError("run git in", dir, error));
      },
    );
    // Git may have answered, or gone, before it read all: then its own answer counts.
    child.stdin?.on("error", () => undefined);
    child.stdin?.end(input ?? "");
  });
}

/** Nothing is asked of a person, locked or fetched, and what git says is in English. */
function quietly(env: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  const { GIT_DIR: _, GIT_WORK_TREE: __, GIT_INDEX_FILE: ___, ...rest } = env;
  return {
    ...rest,
    GIT_TERMINAL_PROMPT: "0",
    GIT_OPTIONAL_LOCKS: "0",
    GIT_NO_LAZY_FETCH: "1",
    LC_ALL: "C",
  };
}
