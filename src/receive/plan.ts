/** What is to be done with all that was handed in. Nothing is written by a plan. */
import type { NewFile } from "../archive/write-new.ts";
import { findById } from "../records/archive.ts";
import { pathOf } from "./compare-pictures.ts";
import { type Placed, placeAll, type Receiver } from "./give-codes.ts";
import { folderOf } from "./hand-in.ts";
import { withMark } from "./marks.ts";
import type { ReceivingPlan } from "./outcomes.ts";
import { isPlainlyOther, type KnownTiles, planKnown } from "./plan-known.ts";
import type { SettledClaim } from "./settled.ts";

export interface Around extends Omit<Receiver, "isOther">, KnownTiles {}

/** Plans what becomes of every tile that was handed in, in the order of the hand-ins. */
export function planReceiving(claims: readonly SettledClaim[], around: Around): ReceivingPlan {
  const isOther = (claim: SettledClaim, tile: string) => isPlainlyOther(claim, tile, around);
  const plan: Mutable<ReceivingPlan> = { newTiles: [], additions: [], here: [], refusals: [] };
  for (const placed of placeAll(claims, { ...around, isOther })) {
    if (placed.kind === "refused") plan.refusals.push(placed.refusal);
    else if (placed.kind === "same")
      plan.here.push({ from: placed.claim.from, as: `the same as ${placed.from}` });
    else if (placed.kind === "new") addNew(placed, around, plan);
    else addKnown(placed, around, plan);
  }
  return plan;
}

type Mutable<T> = { readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K] };

function addNew(
  placed: Extract<Placed, { kind: "new" }>,
  around: Around,
  plan: Mutable<ReceivingPlan>,
): void {
  const { claim, code, mark } = placed;
  const set = findById(around.archive.sets, placed.set);
  const file = `${set ? folderOf(set.file) : "tiles"}/${code}.md`;
  const text = claim.text ?? "";
  const files = [
    { path: file, content: mark === null ? text : withMark(text, mark) },
    ...claim.pictures.map((picture) => ({
      path: pathOf({ id: code, file }, picture),
      content: picture.bytes,
    })),
  ];
  const twice = files.find(({ path }) => around.taken(path)) ?? findTwice(files);
  if (twice) {
    const why = `${twice.path} is the name of another photograph. Take that one out of the archive, or give this one another name.`;
    plan.refusals.push({ what: claim.from, why });
    return;
  }
  plan.newTiles.push({
    ...{ from: claim.from, code, set: placed.set, file, why: placed.why, files },
    isWithoutCode: mark !== null && placed.why.length === 0,
    pictures: claim.pictures,
  });
}

function findTwice(files: readonly NewFile[]): NewFile | undefined {
  return files.find(({ path }, at) => files.findIndex((other) => other.path === path) !== at);
}

function addKnown(
  { claim, tile }: Extract<Placed, { kind: "known" }>,
  around: Around,
  plan: Mutable<ReceivingPlan>,
): void {
  const known = planKnown(claim, tile, around);
  if ("why" in known) plan.refusals.push(known);
  else if ("as" in known) plan.here.push(known);
  else plan.additions.push(known);
}
