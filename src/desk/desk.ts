/**
 * The desk: pages for the teacher alone, which `serve` shows beside the site and never publishes. They
 * may write into the archive, so whoever asks is doubted by `local-server/` first.
 */
import type { ServerResponse } from "node:http";
import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import { send, sendAsset, sendHtml, sendJson, setPolicy } from "../local-server/answers.ts";
import { nowhere } from "../local-server/door.ts";
import type { TakesPictures } from "../local-server/local-server.ts";
import { largestPicture } from "../terms/limits.ts";
import { IndexPage } from "./index-page.tsx";
import type { DeskPage } from "./page.ts";
import { deskPages } from "./pages.ts";
import { Shell } from "./shell.tsx";
import { type Elsewhere, newCodeAddress } from "./tablet/tablet.ts";
import type { DeskWork } from "./work.ts";

export interface DeskNeeds {
  readonly work: DeskWork;
  /** Styles, scripts and fonts, by their addresses beneath `assets/`. */
  readonly assets: ReadonlyMap<string, Uint8Array>;
  /** What a page must send with whatever it posts. */
  readonly token: string;
  /** Where else it is shown than on this computer; nowhere where it is left out. */
  readonly elsewhere?: Elsewhere;
}

/** What the desk answers; paths begin with `/desk/`. */
export interface Desk {
  readonly token: string;
  readonly longestBody: number;
  /** @throws Refused, and whatever fails */
  readonly get: (path: string, response: ServerResponse) => Promise<void>;
  /** @throws Refused, and whatever fails */
  readonly post: (path: string, body: unknown, response: ServerResponse) => Promise<void>;
  readonly pictures: TakesPictures;
}

/** Letters of one thing posted. The notes of a tile may fill a page or two, a load may name two hundred tiles. */
const longestBody = 50_000;

/** @param pages all of them, but in tests */
export function makeDesk(needs: DeskNeeds, pages: readonly DeskPage[] = deskPages): Desk {
  const { work, token, elsewhere } = needs;
  return {
    token,
    longestBody,
    get: (path, response) => answer(path, response, needs, pages),
    async post(path, body, response) {
      if (path === newCodeAddress && typeof elsewhere === "object") {
        elsewhere.pass.renew();
        return sendJson(response, {});
      }
      const [, name, action] = /^\/desk\/([^/]+)\/([^/]+)$/u.exec(path) ?? [];
      const actions = pages.find((page) => page.name === name)?.actions ?? {};
      const act = Object.hasOwn(actions, action ?? "") ? actions[action ?? ""] : undefined;
      if (!act) throw nowhere();
      sendJson(response, await act(body, work));
    },
    pictures: {
      largest: largestPicture,
      async take(path, bytes, response) {
        const { name, action, of } = threeOf(path);
        const takers = pages.find((page) => page.name === name)?.pictures ?? {};
        const take = Object.hasOwn(takers, action) ? takers[action] : undefined;
        if (!take) throw nowhere();
        sendJson(response, await take(of, bytes, work));
      },
    },
  };
}

/** `/desk/unload/photograph/EV-1`: a page, what it is asked for, and of what. */
function threeOf(path: string) {
  const [, name = "", action = "", of = ""] =
    /^\/desk\/([^/]+)\/([^/]+)\/([^/]+)$/u.exec(path) ?? [];
  return { name, action, of };
}

async function answer(
  path: string,
  response: ServerResponse,
  { work, assets, token, elsewhere }: DeskNeeds,
  pages: readonly DeskPage[],
): Promise<void> {
  setPolicy(response);
  const asset = /^\/desk\/assets\/(.+)$/u.exec(path)?.[1];
  if (asset !== undefined) {
    const found = assets.get(asset);
    if (!found) throw nowhere();
    return sendAsset(response, asset, found);
  }
  const picture = findPicture(path, work, pages);
  if (picture) return send(response, "image/webp", picture);
  const archive = await work.read();
  const tablet = typeof elsewhere === "object" ? elsewhere : undefined;
  const found = findPage(path, { archive, pages, tablet });
  if (!found) throw nowhere();
  const { page, main } = found;
  const whole = renderToString(Shell({ archive, page, pages, token, elsewhere, children: main }));
  sendHtml(response, `<!doctype html>\n${whole}\n`);
}

function findPicture(path: string, work: DeskWork, pages: readonly DeskPage[]) {
  const { name, action, of } = threeOf(path);
  const shows = pages.find((page) => page.name === name)?.shows ?? {};
  return Object.hasOwn(shows, action) ? shows[action]?.(of, work) : undefined;
}

/** The desk's first page has no entry of its own in its head. */
function findPage(
  path: string,
  first: Parameters<typeof IndexPage>[0],
): { readonly page: DeskPage | undefined; readonly main: VNode } | undefined {
  if (path === "/desk/") return { page: undefined, main: IndexPage(first) };
  const [, name, of] = /^\/desk\/([^/]+)(?:\/([^/]+))?$/u.exec(path) ?? [];
  const page = first.pages.find((each) => each.name === name);
  const main = page?.render(first.archive, of);
  return main && { page, main };
}
