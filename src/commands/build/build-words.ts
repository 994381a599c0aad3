/** What `tilebook build` tells of its work, on standard error. */
import type { Catalogue } from "../../catalogue/types.ts";
import type { LeftOut } from "../../leaving-out/left-out.ts";
import type { Published } from "../../publish/publish.ts";
import type { SiteRequest } from "../../publish/site-request.ts";
import type { Problem } from "../../records/problem.ts";
import type { Examined } from "../examine/examine.ts";
import { formatDuration, type Progress } from "../progress.ts";
import { printReport } from "../report.ts";

/** Tells what keeps a site from being built. */
export function tellRefusal(
  { read }: Examined,
  problems: readonly Problem[],
  { archive, leaveOutFaulty }: { readonly archive: string; readonly leaveOutFaulty?: boolean },
): void {
  printReport("text", problems.map(read.locate), read.counts, archive);
  const why = leaveOutFaulty
    ? "every page rests on what is faulty there, so it cannot be left out: mend it first."
    : "mend the errors first.";
  console.error(`Nothing was written: ${why} The last good site stands as it was.`);
}

/** Tells what waits to whoever builds, who may know all of it. */
export function tellLeftOut(
  { read }: Examined,
  leftOut: readonly LeftOut[],
  archive: string,
): void {
  const faults = leftOut.flatMap((record) => record.faults).map(read.locate);
  printReport("text", faults, read.counts, archive);
  const resting = leftOut.filter((record) => record.faults.length === 0);
  const records = leftOut.filter(({ kind }) => kind !== "file").length;
  console.error(
    [
      `The site was published without ${records} of ${read.recordFiles.length} records.`,
      ...(resting.length > 0
        ? ["Without faults of their own, they wait for what they rest on:"]
        : []),
      ...resting.map(({ file, because }) =>
        because ? `  ${file} waits for the ${because.kind} ${because.id}` : `  ${file}`,
      ),
    ].join("\n"),
  );
}

/** Tells once why no page says when its record changed. */
export function tellNoDates(why: string | null, quiet: boolean): void {
  if (why !== null && !quiet) console.error(`Warning: ${why}`);
}

/** Tells what was written, and how long each stage took. */
export function tellSummary(
  sites: readonly SiteRequest[],
  { written, carriedOver, searchMade }: Published,
  { problems, check }: { readonly problems: readonly Problem[]; readonly check: string },
  progress: Progress,
): void {
  const [whole] = sites.map((site) => site.catalogue);
  const lines = [
    `${whole ? tellCounts(whole) : ""}: ${written} pages written, ${carriedOver} carried over, search index ${searchMade ? "made" : "carried over"}.`,
    ...sites.flatMap(tellLink),
    ...(problems.length > 0
      ? [`${problems.length} practice notes and warnings: “${check}” tells them.`]
      : []),
    progress
      .times()
      .map(({ name, ms }) => `${name} ${formatDuration(ms)}`)
      .join(", "),
  ];
  console.error(lines.join("\n"));
}

/** Where an unlisted set is: nothing on the site leads there. */
function tellLink({ catalogue: { sets, studio }, under }: SiteRequest): readonly string[] {
  if (under === "") return [];
  const root = studio.address?.replace(/\/*$/u, "/");
  const where = root === undefined ? `${under}/index.html in the site` : `${root}${under}/`;
  return [`${sets[0]?.name ?? "An unlisted set"} is reached by its link alone: ${where}`];
}

function tellCounts({ tiles, glazes, firings }: Catalogue): string {
  return `${tiles.length} tiles, ${glazes.length} glazes, ${firings.length} firings`;
}
