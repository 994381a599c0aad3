/** Looks at the photographs that were handed in, and at those of the tiles that they may belong to. */
import { folderFiles } from "../../archive/folder-files.ts";
import { tooHeavyFault } from "../../photos/fault.ts";
import { hashOf } from "../../photos/hash.ts";
import { takeInPicture } from "../../photos/take-in.ts";
import type { Claim, ClaimedPicture } from "../../receive/claim.ts";
import type { ShownPicture } from "../../receive/compare-pictures.ts";
import { baseOf, type Refusal } from "../../receive/hand-in.ts";
import type { SettledClaim, SettledPicture } from "../../receive/settled.ts";
import type { Archive } from "../../records/archive.ts";
import { findById } from "../../records/archive.ts";
import { largestPicture } from "../../terms/limits.ts";

export interface Settled {
  readonly claims: readonly SettledClaim[];
  readonly refusals: readonly Refusal[];
}

/** Opens and scrubs every photograph; a tile with one that cannot be shown is not taken. */
export async function settleClaims(
  claims: readonly Claim[],
  onProgress: (done: number) => void,
): Promise<Settled> {
  const settled: SettledClaim[] = [];
  const refusals: Refusal[] = [];
  for (const [i, claim] of claims.entries()) {
    const one = await settleClaim(claim);
    if ("why" in one) refusals.push(one);
    else settled.push(one);
    onProgress(i + 1);
  }
  return { claims: settled, refusals };
}

async function settleClaim(claim: Claim): Promise<SettledClaim | Refusal> {
  const pictures: SettledPicture[] = [];
  for (const picture of claim.pictures) {
    const settled = await settlePicture(picture);
    if (typeof settled === "string") return { what: claim.from, why: settled };
    pictures.push(settled);
  }
  const parts = [
    claim.text,
    ...pictures.map(({ role, suffix, sums }) => [role, suffix, sums[0]].join(" ")),
  ];
  return { ...claim, pictures, sum: hashOf(Buffer.from(JSON.stringify(parts))) };
}

/** Why it is not taken: whole sentences. */
async function settlePicture(picture: ClaimedPicture): Promise<SettledPicture | string> {
  const name = baseOf(picture.file.path);
  const contents = picture.file.read();
  const taken =
    "bytes" in contents
      ? await takeInPicture(contents.bytes)
      : { ok: false as const, fault: tooHeavyFault(contents.tooLarge) };
  if (!taken.ok) return `Its photograph ${name}: ${taken.fault.message} ${taken.fault.hint}`;
  const { bytes, sums, removed } = taken;
  return { role: picture.role, suffix: picture.suffix, name, bytes, sums, removed };
}

/** Makes the function that looks at the photographs of a tile of the archive, once for each. */
export function makeShown(dir: string, { tiles }: Archive): (tile: string) => ShownPicture[] {
  const files = folderFiles(dir);
  const sums = new Map<string, string>();
  const sumOf = (file: string) => {
    const known = sums.get(file);
    if (known !== undefined) return known;
    const contents = files.read(file, largestPicture);
    const sum = "bytes" in contents ? hashOf(contents.bytes) : "";
    sums.set(file, sum);
    return sum;
  };
  return (id) =>
    (findById(tiles, id)?.pictures ?? []).map(({ role, file }) => ({
      ...{ role, file },
      sums: [sumOf(file)],
    }));
}
