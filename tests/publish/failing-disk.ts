/** A disk that fails when a test wants it to. */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { onTestFinished } from "vitest";

type Call = "copyFile" | "link" | "mkdir" | "rename" | "writeFile";

/** What one of Node's own calls was told to do: the paths it was given. */
export type Paths = readonly [first: string, second: string];

/**
 * Makes a call of `node:fs/promises` fail as the system would, until the test ends.
 *
 * @param fails whether this one fails, by the paths it was given
 */
export function failOn(call: Call, code: string, fails: (paths: Paths) => boolean): void {
  const calls = fs.promises as unknown as Record<Call, (...words: unknown[]) => Promise<unknown>>;
  const real = calls[call];
  calls[call] = async (...words) => {
    const paths: Paths = [String(words[0]), String(words[1])];
    if (fails(paths)) throw systemError(code, call, paths[0]);
    return real.apply(fs.promises, words);
  };
  syncBuiltinESMExports();
  onTestFinished(() => {
    calls[call] = real;
    syncBuiltinESMExports();
  });
}

function systemError(code: string, syscall: string, path: string): Error {
  return Object.assign(new Error(`${code}: it fails, ${syscall} '${path}'`), {
    code,
    syscall,
    path,
  });
}
