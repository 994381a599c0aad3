/** A disk that fails when a test wants it to. */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { onTestFinished } from "vitest";

type Call = "copyFile" | "link" | "mkdir" | "rename" | "writeFile";

/** What one of Node's own calls was told to do: the paths it was given. */
export type Paths = readonly [first: string, second: string];

/**
 * Makes a call of `node:fs` fail as the system would, in all its forms, until the test ends.
 *
 * @param fails whether this one fails, by the paths it was given
 */
export function failOn(call: Call, code: string, fails: (paths: Paths) => boolean): void {
  const check = (words: readonly unknown[]) => {
    const paths: Paths = [String(words[0]), String(words[1])];
    if (fails(paths)) throw systemError(code, call, paths[0]);
  };
  wrap(fs.promises, call, async (words) => check(words));
  wrap(fs, `${call}Sync`, check);
}

/** Runs `first` before what an object's method does, and then it, where that did not throw. */
function wrap(object: object, name: string, first: (words: readonly unknown[]) => unknown): void {
  const methods = object as Record<string, (...words: unknown[]) => unknown>;
  const real = methods[name];
  if (!real) throw new Error(`There is no ${name}`);
  methods[name] = (...words) => {
    const waited = first(words);
    return waited instanceof Promise
      ? waited.then(() => real.apply(object, words))
      : real.apply(object, words);
  };
  syncBuiltinESMExports();
  onTestFinished(() => {
    methods[name] = real;
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
