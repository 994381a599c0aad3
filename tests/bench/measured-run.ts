/** Runs a program and measures it with all processes that it starts. */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";

export interface Run {
  readonly seconds: number;
  /** Processor time, of all processes together. */
  readonly busy: number;
  /** The most memory that all processes held at one moment, in MiB; null where nobody can tell. */
  readonly memory: number | null;
  /** What was said on standard error. */
  readonly said: string;
}

const sampleEvery = 25;

/**
 * Runs a program to its end.
 *
 * @throws where it fails
 */
export async function measureRun(
  folder: string,
  program: string,
  ...words: readonly string[]
): Promise<Run> {
  const begun = performance.now();
  // A shell's `times` tells what its children used, and theirs.
  const script = '"$@" >/dev/null; code=$?; times; exit $code';
  const child = spawn("sh", ["-c", script, "sh", program, ...words], { cwd: folder });
  const [out, said] = [gather(child.stdout), gather(child.stderr)];
  let memory = 0;
  const sampling = setInterval(() => {
    memory = Math.max(memory, memoryOf(child.pid ?? 0));
  }, sampleEvery);
  const code = await new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", resolve);
  });
  clearInterval(sampling);
  const seconds = (performance.now() - begun) / 1000;
  if (code !== 0) throw new Error(`${program} ${words.join(" ")} ended with ${code}:\n${said()}`);
  return { seconds, busy: busyOf(out()), memory: memory === 0 ? null : memory, said: said() };
}

function gather(stream: NodeJS.ReadableStream): () => string {
  const parts: string[] = [];
  stream.on("data", (part) => parts.push(String(part)));
  return () => parts.join("");
}

/** `0m1.23s 0m0.45s`, the second line of which is of the children. */
function busyOf(times: string): number {
  const line = times.trim().split("\n").at(-1) ?? "";
  return [...line.matchAll(/(\d+)m([\d.]+)s/gu)].reduce(
    (sum, [, minutes, seconds]) => sum + Number(minutes) * 60 + Number(seconds),
    0,
  );
}

/** Of a process and its descendants, in MiB; 0 where the system has no `/proc`. */
function memoryOf(process: number): number {
  try {
    const status = readFileSync(`/proc/${process}/status`, "utf8");
    const own = Number(/VmRSS:\s+(\d+)/u.exec(status)?.[1] ?? 0) / 1024;
    const children = readFileSync(`/proc/${process}/task/${process}/children`, "utf8");
    const inside = children.trim().split(" ").filter(Boolean).map(Number);
    return inside.reduce((sum, child) => sum + memoryOf(child), own);
  } catch {
    // It has ended meanwhile.
    return 0;
  }
}
