/** `tilebook share`: one set alone, as a folder and a zip to hand on. */
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import type { SharedWith } from "../../catalogue/shared.ts";
import { siteMark } from "../../publish/staging.ts";
import { TooLargeForZip, zipSite } from "../../publish/zip-site.ts";
import { type Filed, findById } from "../../records/archive.ts";
import type { SetRecord } from "../../records/set.ts";
import { findIdFault, idSlug } from "../../terms/ids.ts";
import { asTypedFor } from "../as-typed.ts";
import { type Ask, mayDo } from "../ask.ts";
import { gatherFindings, linkSites, type Marked, tellNoSet } from "../build/build.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import type { Folders } from "../folders.ts";
import { planSharing, type SharePlan } from "./share-plan.ts";
import { tellPlan, tellWhereItIs } from "./share-words.ts";

export interface ShareOptions extends Folders {
  readonly whom: SharedWith;
  /** Do it without asking. */
  readonly yes: boolean;
  /** Undefined where nobody sits at a terminal. */
  readonly ask: Ask | undefined;
  readonly quiet: boolean;
}

/**
 * Shows what of a set would be handed on, asks, and writes it.
 *
 * @returns 1 where the archive has errors
 * @throws WrongUsage where there is no such set, or another file is where the zip belongs
 */
export async function share(id: string, options: ShareOptions): Promise<number> {
  const { archive, whom, quiet } = options;
  const fault = findIdFault(id);
  if (fault) throw new WrongUsage(`“${id}” cannot be the name of a set: ${fault}.`);
  const folder = resolve(options.out ?? defaultFolder(archive, id, whom));
  refuseOtherZip(folder);
  const plans: SharePlan[] = [];
  const linked = await linkSites({ ...options, out: folder, quiet: true }, (ready) => {
    const plan = planShare(ready, findSet(ready, id), options);
    plans.push(plan);
    return [{ catalogue: plan.catalogue, under: "", waiting: [] }];
  });
  const [plan] = plans;
  if (linked.sites === null || plan === undefined) {
    if (linked.sites === null) linked.tell();
    return exitCodes.faulty;
  }
  if (!quiet || !options.yes) console.error(tellPlan(plan).join("\n"));
  if (!(await mayDo(options))) return exitCodes.done;
  await linked.write();
  if (options.out === undefined) keepOutOfRepository(archive);
  console.log([...(await writeZip(folder)), ...tellWhereItIs(plan)].join("\n"));
  return exitCodes.done;
}

function defaultFolder(archive: string, id: string, whom: SharedWith): string {
  return join(archive, "shared", whom === "families" ? `${idSlug(id)}-for-families` : idSlug(id));
}

const zipOf = (folder: string) => `${folder}.zip`;

/** A zip is written over only where the folder beside it says that Tilebook made both. */
function refuseOtherZip(folder: string): void {
  const zip = zipOf(folder);
  if (!existsSync(zip) || existsSync(join(folder, siteMark))) return;
  throw new WrongUsage(
    `${zip} is there already, and Tilebook did not write it. Take it away, or name another folder with --out. Nothing was written.`,
  );
}

/** What is shared may not be for everyone who can read the repository. */
function keepOutOfRepository(archive: string): void {
  const ignore = join(archive, "shared", ".gitignore");
  if (existsSync(ignore)) return;
  mkdirSync(join(archive, "shared"), { recursive: true });
  writeFileSync(ignore, "*\n");
}

async function writeZip(folder: string): Promise<readonly string[]> {
  const zip = zipOf(folder);
  try {
    const bytes = await zipSite(folder, zip, basename(folder));
    const size = `${Math.max(0.1, bytes / 1e6).toFixed(1)} MB`;
    return [`Written: the folder ${folder}, and the same as one file: ${zip} (${size}).`];
  } catch (error) {
    if (!(error instanceof TooLargeForZip)) throw error;
    return [`Written: the folder ${folder}. It is too large for one zip.`];
  }
}

function findSet(ready: Marked, id: string): Filed<SetRecord> {
  const set = findById(ready.archive.sets, id);
  if (set) return set;
  throw new WrongUsage(`${tellNoSet(id, ready)} Nothing was written.`);
}

function planShare(ready: Marked, set: Filed<SetRecord>, options: ShareOptions): SharePlan {
  const { archive, problems } = ready;
  const known = { archive, problems, findings: gatherFindings(ready) };
  return planSharing(known, set, options.whom, asTypedFor(options.archive));
}
