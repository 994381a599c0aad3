/** The copy stand's server: it writes only when it is asked to. */
import type { ServerResponse } from "node:http";
import { send, sendAsset, sendHtml, sendJson, setPolicy } from "../local-server/answers.ts";
import { nowhere } from "../local-server/door.ts";
import { type LocalServer, localServer, makeToken } from "../local-server/local-server.ts";
import { renderPage } from "./page.tsx";
import { parseFramesOnTile, parseWriteRequest } from "./requests.ts";
import type {
  FramesOnTile,
  MeasuredWords,
  StandView,
  WriteRequest,
  WrittenWords,
} from "./types.ts";

/** What the server does for the page; a tile is named by its code, never by a path. */
export interface StandWork {
  /** Reads the archive anew. */
  readonly view: () => Promise<StandView>;
  /** A picture at least so wide; undefined where no such photograph is shown. */
  readonly picture: (tile: string, width: number) => Promise<Uint8Array | undefined>;
  readonly measure: (asked: FramesOnTile) => Promise<MeasuredWords | undefined>;
  readonly write: (asked: WriteRequest) => Promise<WrittenWords | undefined>;
  /** Styles, scripts and fonts, by their address beneath `assets/`. */
  readonly assets: ReadonlyMap<string, Uint8Array>;
  /** Is told of what failed and should not have. */
  readonly failed: (error: unknown) => void;
}

/** Makes the server for a copy stand. */
export function standServer(work: StandWork): LocalServer {
  const token = makeToken();
  return localServer(
    {
      get: (path, _, response) => answer(path, response, work, token),
      post: (path, body, response) => answerPost(path, body, response, work),
      failed: work.failed,
    },
    token,
  );
}

async function answer(
  path: string,
  response: ServerResponse,
  work: StandWork,
  token: string,
): Promise<void> {
  setPolicy(response);
  if (path === "/") return sendHtml(response, renderPage(token));
  if (path === "/stand.json") return sendJson(response, await work.view());
  const asset = /^\/assets\/(.+)$/u.exec(path)?.[1];
  if (asset !== undefined) return sendAsset(response, asset, demand(work.assets.get(asset)));
  const [, size, tile] = /^\/(large|small)\/([^/]+)$/u.exec(path) ?? [];
  if (tile === undefined) throw nowhere();
  const width = size === "large" ? 1280 : 320;
  return send(response, "image/webp", demand(await work.picture(tile, width)));
}

async function answerPost(
  path: string,
  body: unknown,
  response: ServerResponse,
  work: StandWork,
): Promise<void> {
  if (path === "/measure")
    return sendJson(response, demand(await work.measure(parseFramesOnTile(body))));
  if (path === "/write")
    return sendJson(response, demand(await work.write(parseWriteRequest(body))));
  throw nowhere();
}

function demand<T>(found: T | undefined): T {
  if (found === undefined) throw nowhere();
  return found;
}
