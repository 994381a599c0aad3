/** What files held in older versions, read in one go. */
import { runGit } from "./run-git.ts";

/**
 * Reads what git knows by some ids.
 *
 * @param ids git's own, in hexadecimal digits
 * @param largest in bytes: what is larger is not read
 * @returns by id; what git has not, or is too large, is left out
 * @throws MachineError where git could not be run
 */
export async function readBlobs(
  dir: string,
  ids: readonly string[],
  largest: number,
): Promise<ReadonlyMap<string, Uint8Array>> {
  if (ids.length === 0) return new Map();
  const sizes = await runGit(dir, ["cat-file", "--batch-check"], linesOf(ids));
  if (!sizes.ok) return new Map();
  const small = sizes.output
    .toString("utf8")
    .split("\n")
    .flatMap((line) => {
      const [, id, size] = /^([\da-f]+) blob (\d+)$/u.exec(line) ?? [];
      return id !== undefined && Number(size) <= largest ? [id] : [];
    });
  const read = await runGit(dir, ["cat-file", "--batch"], linesOf(small));
  return read.ok ? parseBatch(read.output) : new Map();
}

function linesOf(ids: readonly string[]): string {
  return ids.map((id) => `${id}\n`).join("");
}

/** For each a line such as `b802712… blob 312`, that many bytes, and a new line. */
function parseBatch(output: Buffer): ReadonlyMap<string, Uint8Array> {
  const blobs = new Map<string, Uint8Array>();
  for (let at = 0; at < output.length; ) {
    const end = output.indexOf("\n", at);
    const [id = "", , size = ""] = output.toString("utf8", at, end).split(" ");
    const from = end + 1;
    blobs.set(id, output.subarray(from, from + Number(size)));
    at = from + Number(size) + 1;
  }
  return blobs;
}
