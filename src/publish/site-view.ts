/** How a site is shown while it is worked on, and the open pages that are told when that changes. */
import { randomUUID } from "node:crypto";
import type { ServerResponse } from "node:http";
import type { Trouble } from "../../templates/serve/trouble.ts";
import type { UnwrittenSites } from "./unwritten-sites.ts";

/** How the site is shown. */
export interface SiteShown {
  /** What keeps the site from being built anew; null where nothing does. */
  readonly trouble: Trouble | null;
  /** The path beneath which it will be published, `/` or `/tests/`: some of its own links name it. */
  readonly under: string;
  /** The site as long as the folder does not hold it yet; null where it does. */
  readonly unwritten: UnwrittenSites | null;
}

export interface View {
  readonly shown: () => SiteShown;
  /** Another after every change, and in every run: what a page says that was sent since. */
  readonly mark: () => string;
  /** Shows the site otherwise, and tells every open page; what is left out stays as it was. */
  readonly show: (shown: Partial<SiteShown>) => void;
  /** The folder now holds what was shown before. */
  readonly showWritten: () => void;
  /** What is shown could not be written, and is shown from memory on; tells every open page why. */
  readonly showUnwritable: (trouble: Trouble) => void;
  /** Waits until the folder holds what is shown, or nothing is on its way there any more. */
  readonly untilWritten: () => Promise<void>;
  /** Tells an open page the mark, now and after every change. */
  readonly listen: (response: ServerResponse) => void;
  readonly close: () => void;
}

export function makeView(): View {
  const run = randomUUID();
  let shown: SiteShown = { trouble: null, under: "/", unwritten: null };
  let changes = 0;
  const listeners = new Set<ServerResponse>();
  const waiting = new Set<() => void>();
  let isOnItsWay = false;
  const mark = () => `${run}-${changes}`;
  const tell = (listener: ServerResponse) => listener.write(`data: ${mark()}\n\n`);
  const change = (now: Partial<SiteShown>) => {
    shown = { ...shown, ...now };
    if (now.unwritten !== undefined) isOnItsWay = now.unwritten !== null;
    if (isOnItsWay) return;
    for (const go of waiting) go();
    waiting.clear();
  };
  const show = (now: Partial<SiteShown>) => {
    change(now);
    changes += 1;
    for (const listener of listeners) tell(listener);
  };
  return {
    mark,
    shown: () => shown,
    show,
    showWritten: () => change({ unwritten: null }),
    showUnwritable(trouble) {
      isOnItsWay = false;
      show({ trouble });
    },
    untilWritten: () =>
      isOnItsWay ? new Promise((resolve) => waiting.add(resolve)) : Promise.resolve(),
    listen(response) {
      response.writeHead(200, { "content-type": "text/event-stream" });
      tell(response);
      listeners.add(response);
      response.on("close", () => listeners.delete(response));
    },
    close() {
      for (const listener of listeners) listener.end();
    },
  };
}
