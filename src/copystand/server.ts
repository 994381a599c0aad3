/** The copy stand's server: it answers this computer alone, and writes only when it is asked to. */
import { randomBytes } from "node:crypto";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { renderPage } from "./page.tsx";
import {
  checkRequest,
  type Doorkeeper,
  parseFramesOnTile,
  parseWriteRequest,
  Refused,
  readBody,
} from "./requests.ts";
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

export interface StandServer {
  /** Resolves with the port when it listens; rejects where the port is taken. */
  readonly listen: (port: number) => Promise<number>;
  readonly close: () => void;
}

/** Makes the server for a copy stand. */
export function standServer(work: StandWork): StandServer {
  const token = randomBytes(24).toString("base64url");
  const server = createServer(async (request, response) => {
    const { port } = server.address() as AddressInfo;
    try {
      checkRequest(request, { port, token });
      await answer(request, response, work, { port, token });
    } catch (error) {
      tell(response, error, work);
    }
  });
  return {
    listen: (port) =>
      new Promise((resolve, reject) => {
        server.once("error", reject);
        server.listen(port, "localhost", () => resolve((server.address() as AddressInfo).port));
      }),
    close() {
      server.close();
      server.closeAllConnections();
    },
  };
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  work: StandWork,
  { token }: Doorkeeper,
): Promise<void> {
  const { pathname } = new URL(request.url ?? "/", "http://localhost");
  if (request.method === "POST") return answerPost(pathname, request, response, work);
  if (pathname === "/") return send(response, "text/html; charset=utf-8", renderPage(token));
  if (pathname === "/stand.json") return sendJson(response, await work.view());
  const asset = /^\/assets\/(.+)$/u.exec(pathname)?.[1];
  const picture = /^\/(large|small)\/([^/]+)$/u.exec(pathname);
  if (asset !== undefined) return send(response, typeOf(asset), demand(work.assets.get(asset)));
  if (!picture) throw nowhere();
  const width = picture[1] === "large" ? 1280 : 320;
  return send(response, "image/webp", demand(await work.picture(decode(picture[2]), width)));
}

async function answerPost(
  pathname: string,
  request: IncomingMessage,
  response: ServerResponse,
  work: StandWork,
): Promise<void> {
  const body = await readBody(request);
  if (pathname === "/measure")
    return sendJson(response, demand(await work.measure(parseFramesOnTile(body))));
  if (pathname === "/write")
    return sendJson(response, demand(await work.write(parseWriteRequest(body))));
  throw nowhere();
}

function demand<T>(found: T | undefined): T {
  if (found === undefined) throw nowhere();
  return found;
}

function nowhere(): Refused {
  return new Refused(404, "There is no such thing here.");
}

function decode(part = ""): string {
  try {
    return decodeURIComponent(part);
  } catch {
    throw nowhere();
  }
}

const types: Readonly<Record<string, string>> = {
  css: "text/css; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  svg: "image/svg+xml",
  woff2: "font/woff2",
};

function typeOf(name: string): string {
  return types[name.slice(name.lastIndexOf(".") + 1)] ?? "application/octet-stream";
}

const policy = [
  ...["default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self'"],
  ...["font-src 'self'", "connect-src 'self'", "base-uri 'none'", "form-action 'none'"],
  "frame-ancestors 'none'",
].join("; ");

/** No other page may show, read or frame what is sent, and no cache keeps it. */
const headers = {
  "cache-control": "no-store",
  "content-security-policy": policy,
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "referrer-policy": "no-referrer",
  "x-content-type-options": "nosniff",
};

function send(response: ServerResponse, type: string, body: string | Uint8Array, status = 200) {
  response.writeHead(status, { ...headers, "content-type": type });
  response.end(body);
}

function sendJson(response: ServerResponse, value: unknown): void {
  send(response, "application/json", JSON.stringify(value));
}

function tell(response: ServerResponse, error: unknown, work: StandWork): void {
  const isRefused = error instanceof Refused;
  if (!isRefused) work.failed(error);
  const words = isRefused
    ? error.message
    : "That failed. The window in which the command runs tells why.";
  send(response, "text/plain; charset=utf-8", words, isRefused ? error.status : 500);
}
