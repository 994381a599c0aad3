/** `tilebook receive`: takes in what makers handed in, after showing what will be done. */
import { textParser } from "../../archive/parse-text.ts";
import { hashOf } from "../../photos/hash.ts";
import type { ReadArchive } from "../../reader/read-archive-files.ts";
import { shortNames } from "../../reader/short-form/names.ts";
import { findAllClaims } from "../../receive/all-claims.ts";
import { takenAmong } from "../../receive/compare-pictures.ts";
import type { Known } from "../../receive/find-claims.ts";
import type { ReceivingPlan } from "../../receive/outcomes.ts";
import { planReceiving } from "../../receive/plan.ts";
import { layersReader } from "../../receive/sheet-layers.ts";
import { tellHere, tellNewTiles, tellRefusals, tellSheet } from "../../receive/words.ts";
import type { Archive } from "../../records/archive.ts";
import { findById } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import { asTypedFor } from "../as-typed.ts";
import type { Ask } from "../ask.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { openWhole, unknown } from "../open-archive.ts";
import { startProgress } from "../progress.ts";
import { type CheckedPlan, checkPlan } from "./receive-check.ts";
import { openHandedIn } from "./receive-files.ts";
import { makeShown, settleClaims } from "./receive-pictures.ts";
import { say, type TakenIn, takeIn } from "./receive-questions.ts";

export interface ReceiveOptions {
  readonly archive: string;
  /** The id of the set for tiles that name none. */
  readonly set?: string;
  /** Take what is new without asking. */
  readonly yes: boolean;
  /** Undefined where nobody sits at a terminal. */
  readonly ask: Ask | undefined;
}

/**
 * Receives what makers handed in. New tiles are asked for once, together, and what a tile of the archive
 * would gain for each tile by itself; what the archive says otherwise is changed only where somebody
 * says so.
 *
 * @param names zips, folders, records, photographs, spreadsheets
 * @returns 1 where something was not taken, or the archive has errors that are in the way
 */
export async function receive(names: readonly string[], options: ReceiveOptions): Promise<number> {
  const opened = await openWhole(options.archive, isInTheWay);
  if (!opened) return exitCodes.faulty;
  const set = options.set === undefined ? null : findSet(opened.archive, options.set);
  const handedIn = await openHandedIn(names);
  const found = findAllClaims(handedIn.handIns, knownOf(opened), {
    sumOf: hashOf,
    readLayers: layersReader((written) =>
      shortNames(
        opened.archive,
        written === null ? set : (findById(opened.archive.sets, written)?.id ?? null),
      ),
    ),
  });
  const progress = startProgress(false);
  progress.stage("look at the photographs");
  const settled = await settleClaims(found.claims, (done) =>
    progress.count(done, found.claims.length),
  );
  progress.finish();
  const planned = planReceiving(settled.claims, around(opened, options.archive, set));
  const refusals = [...handedIn.refusals, ...found.refusals, ...settled.refusals];
  const checked = checkPlan(
    { ...planned, refusals: [...refusals, ...planned.refusals] },
    { dir: options.archive, archive: opened.archive, texts: opened.texts },
  );
  say(found.sheets.flatMap(tellSheet));
  say(tellPlan(checked));
  const taken = await takeIn(checked.plan, opened.texts, options);
  return tellEnd(checked.plan, taken, options.archive);
}

/** Sets say which codes are free and what their tiles have; makers are in studio.yaml. */
function isInTheWay(file: string): boolean {
  return idKey(file).endsWith("/set.md") || idKey(file) === "studio.yaml";
}

function findSet({ sets }: Archive, written: string): string {
  const found = findById(sets, written);
  if (found) return found.id;
  const known = [...sets.values()].map(({ id, record }) => ({ id, name: record.name }));
  throw new WrongUsage(`${unknown(written, "set", known)} Nothing was changed.`);
}

type Opened = ReadArchive & { readonly archive: Archive };

function knownOf({ archive, recordFiles }: Opened): Known {
  const tiles = recordFiles.filter(({ kind }) => kind === "tile");
  return {
    tiles: new Map(tiles.map(({ id }) => [idKey(id), id])),
    sets: new Map([...archive.sets].map(([key, { id }]) => [key, id])),
    namedPhoto(text) {
      const photo = textParser.parse(text, "markdown").source?.photo;
      const file = typeof photo === "object" && "file" in photo ? photo.file : undefined;
      return typeof file === "string" ? file : undefined;
    },
  };
}

function around(opened: Opened, dir: string, set: string | null) {
  const { archive, recordFiles, texts, pictures } = opened;
  return {
    ...{ archive, recordFiles, texts, set, parser: textParser },
    shown: makeShown(dir, archive),
    taken: takenAmong([...pictures, ...recordFiles.map(({ file }) => file)]),
  };
}

function tellPlan({ plan, archive }: CheckedPlan): readonly string[] {
  return [
    ...tellNewTiles(plan.newTiles, archive),
    ...tellHere(plan.here),
    ...tellRefusals(plan.refusals),
  ];
}

function tellEnd(plan: ReceivingPlan, taken: TakenIn, archive: string): number {
  const { declined, failed } = taken;
  say([...declined, ...failed]);
  const isLeft = plan.refusals.length > 0 || failed.length > 0;
  if (isLeft) console.log("What is told above as not taken is still to do.");
  else if (declined.length === 0) console.log("All that was handed in is here.");
  console.log(`See that all is well: ${asTypedFor(archive)("check")}`);
  return isLeft ? exitCodes.faulty : exitCodes.done;
}
