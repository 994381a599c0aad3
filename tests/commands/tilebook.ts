/** Runs commands as people do: in this process, or as the program in one of its own. */
import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { vi } from "vitest";
import { main } from "../../src/cli.ts";

export const program = fileURLToPath(new URL("../../src/tilebook.mjs", import.meta.url));

/** What a command left: its exit code (null where it was killed), and what it said. */
export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in this process. */
export async function tilebook(...args: readonly string[]): Promise<Ended> {
  const out: string[] = [];
  const err: string[] = [];
  const spies = [
    vi.spyOn(console, "log").mockImplementation((...words) => void out.push(words.join(" "))),
    vi.spyOn(console, "error").mockImplementation((...words) => void err.push(words.join(" "))),
    vi.spyOn(process.stderr, "write").mockImplementation((words) => {
      err.push(String(words));
      return true;
    }),
  ];
  try {
    const code = await main(args);
    return { code, out: out.join("\n"), err: err.join("\n") };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

export interface ChildOptions {
  /** Added to the environment. */
  readonly env?: Readonly<Record<string, string>>;
  /** Words for Node itself, before the program. */
  readonly node?: readonly string[];
  readonly cwd?: string;
  /** The user to run as, where this process may choose. */
  readonly uid?: number;
  /** Called with all that was said on standard error so far, whenever there is more. */
  readonly onSaid?: (said: string, child: ChildProcess) => void;
}

/** Runs the program in a process of its own. */
export function spawnTilebook(
  args: readonly string[],
  { env, node = [], cwd, uid, onSaid }: ChildOptions = {},
): Promise<Ended> {
  const child = spawn(process.execPath, [...node, program, ...args], {
    env: { ...process.env, ...env },
    ...(cwd !== undefined && { cwd }),
    ...(uid !== undefined && { uid, gid: uid }),
  });
  return ended(child, onSaid);
}

/** Waits for a process to end. */
export function ended(child: ChildProcess, onSaid?: ChildOptions["onSaid"]): Promise<Ended> {
  let out = "";
  let err = "";
  child.stdout?.on("data", (part) => {
    out += part;
  });
  child.stderr?.on("data", (part) => {
    err += part;
    onSaid?.(err, child);
  });
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (code) => resolve({ code, out, err }));
  });
}
