/**
 * Shows what an archive holds, round after round: first from memory, page by page as they are asked
 * for, while the site is written behind that.
 */
import { setTimeout } from "node:timers/promises";
import type { Trouble } from "../../../templates/serve/trouble.ts";
import type { SiteServer } from "../../publish/site-server.tsx";
import { unwrittenSites } from "../../publish/unwritten-sites.ts";
import type { LocatedProblem } from "../../reader/locate.ts";
import { tellMessage } from "../../reporting/located-problem.ts";
import { type BuildOptions, type Linked, linkSites } from "../build/build.ts";
import { describeFailure, tellFailure } from "../failure.ts";
import { latestAlone } from "./latest-alone.ts";

export interface Shown {
  readonly server: SiteServer;
  /** Styles, scripts and fonts of the site, by their paths beneath `assets/`. */
  readonly assets: ReadonlyMap<string, Uint8Array>;
  /** Whether the archive was changed since the round began. */
  readonly isStale: () => boolean;
}

export interface Showing {
  /** Shows what the archive holds now; false where a fault or the machine is in the way. */
  readonly again: () => Promise<boolean>;
}

/**
 * How long a fault must last before it is told, in milliseconds: some programs empty a file and then
 * write it, and nobody wants to be told of that.
 */
const faultMs = 250;

export function keepShowing(options: BuildOptions, { server, assets, isStale }: Shown): Showing {
  const writing = latestAlone();
  let round = 0;
  const tellIfItLasts = async (trouble: Trouble, tell: () => void) => {
    await setTimeout(faultMs);
    if (isStale()) return;
    tell();
    server.show({ trouble });
  };
  const write = (linked: ReadyLink, isFirst: boolean) =>
    writing.next(async () => {
      try {
        const { written, carriedOver } = await linked.write();
        if (!isFirst)
          console.error(`Built again: ${written} pages written, ${carriedOver} carried over.`);
        if (!writing.isAwaited()) server.showWritten();
      } catch (error) {
        if (writing.isAwaited()) return;
        tellFailure(error);
        server.showUnwritable({ kind: "unwritten", words: describeFailure(error) });
      }
    });
  return {
    async again() {
      round += 1;
      const isFirst = round === 1;
      try {
        const linked = await linkSites({ ...options, quiet: options.quiet || !isFirst });
        if (linked.sites) {
          const { pictureFile } = linked;
          const unwritten = unwrittenSites(linked.sites, { assets, pictureFile });
          server.show({ trouble: null, under: pathOf(linked.address), unwritten });
          write(linked, isFirst);
          return true;
        }
        await tellIfItLasts(faultsTrouble(linked.faults), linked.tell);
      } catch (error) {
        await tellIfItLasts(failedTrouble(error), () => tellFailure(error));
      }
      return false;
    },
  };
}

type ReadyLink = Extract<Linked, { readonly write: unknown }>;

function failedTrouble(error: unknown): Trouble {
  return { kind: "failed", words: describeFailure(error) };
}

function faultsTrouble(faults: readonly LocatedProblem[]): Trouble {
  return {
    kind: "faults",
    faults: faults.map((fault) => {
      const { file, line, hint, lineText } = fault;
      return { file, line, message: tellMessage(fault), hint, lineText };
    }),
  };
}

function pathOf(address: string | null): string {
  if (address === null) return "/";
  return new URL(address).pathname.replace(/\/*$/u, "/");
}
