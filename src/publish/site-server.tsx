/**
 * Shows a site on this computer alone, tells its open pages to load again, and shows on them what
 * keeps the site from being built.
 */
import { readFile } from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import { join } from "node:path";
import { renderToString } from "preact-render-to-string";
import sendFile from "send";
import { NoSitePage } from "../../templates/serve/no-site-page.tsx";
import type { Trouble } from "../../templates/serve/trouble.ts";
import { TroubleStrip } from "../../templates/serve/trouble-strip.tsx";
import { send, sendAsset, sendHtml } from "../local-server/answers.ts";
import { nowhere, Refused } from "../local-server/door.ts";
import { type LocalServer, localServer } from "../local-server/local-server.ts";

export interface SiteServer extends LocalServer {
  /** Makes every open page load again. */
  readonly reload: (shown: SiteShown) => void;
}

/** How the site is shown from now on. */
export interface SiteShown {
  /** What keeps the site from being built anew; null where nothing does. */
  readonly trouble: Trouble | null;
  /** The path beneath which it will be published, `/` or `/tests/`: some of its own links name it. */
  readonly under: string;
}

export interface SiteServing {
  /** Styles, fonts and drawings of what is added to pages, by name. */
  readonly assets: ReadonlyMap<string, Uint8Array>;
  /** Is told of what failed and should not have. */
  readonly failed: (error: unknown) => void;
}

/** Where lies what is no part of the site. */
const own = "/_tilebook/";
const script = `new EventSource("${own}events").onmessage = () => location.reload();\n`;

/** A server for a folder that may be replaced by another while it runs. */
export function siteServer(folder: string, { assets, failed }: SiteServing): SiteServer {
  const listeners = new Set<ServerResponse>();
  let shown: SiteShown = { trouble: null, under: "/" };
  const server = localServer({
    async get(path, request, response) {
      if (path === `${own}events`) listen(listeners, response);
      else if (path === `${own}reload.js`) send(response, "text/javascript; charset=utf-8", script);
      else if (path.startsWith(own)) sendOwn(assets, path.slice(own.length), response);
      else {
        const { trouble, under } = shown;
        await sendFromSite(folder, fromRoot(path, under), { request, response, trouble });
      }
    },
    failed,
  });
  return {
    ...server,
    reload(now) {
      shown = now;
      for (const listener of listeners) listener.write("data: reload\n\n");
    },
    close() {
      for (const listener of listeners) listener.end();
      server.close();
    },
  };
}

/** The page for an address that leads nowhere names the path of the published site. */
function fromRoot(path: string, under: string): string {
  return path.startsWith(under) ? path.slice(under.length - 1) : path;
}

function listen(listeners: Set<ServerResponse>, response: ServerResponse): void {
  response.writeHead(200, { "content-type": "text/event-stream" });
  response.write("\n");
  listeners.add(response);
  response.on("close", () => listeners.delete(response));
}

function sendOwn(
  assets: ReadonlyMap<string, Uint8Array>,
  name: string,
  response: ServerResponse,
): void {
  const asset = assets.get(name);
  if (!asset) throw nowhere();
  sendAsset(response, name, asset);
}

interface Asked {
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
  readonly trouble: Trouble | null;
}

async function sendFromSite(folder: string, path: string, asked: Asked): Promise<void> {
  const name = path.endsWith("/") ? `${path}index.html` : path;
  if (name.endsWith(".html")) {
    const page = await readPage(join(folder, name));
    if (page === undefined) return sendNotFound(folder, asked);
    return sendHtml(asked.response, withOwn(page, asked.trouble));
  }
  if (!(await streamFile(folder, name, asked))) await sendNotFound(folder, asked);
}

/** What the system says where there is no such file, or its name is such as no file can have. */
const notThere = ["ENOENT", "ENOTDIR", "EISDIR", "ENAMETOOLONG"];

/** A page; undefined where there is none. That it cannot be read is another matter. */
async function readPage(file: string): Promise<string | undefined> {
  try {
    return await readFile(file, "utf8");
  } catch (error) {
    if (notThere.includes((error as NodeJS.ErrnoException).code ?? "")) return undefined;
    throw error;
  }
}

/**
 * Sends a file, or the part of it that was asked for.
 *
 * @returns false where there is no such file
 */
function streamFile(folder: string, path: string, { request, response }: Asked): Promise<boolean> {
  return new Promise((resolve, reject) => {
    sendFile(request, encodeURI(path), { root: folder, index: false, cacheControl: false })
      .on("error", (error: NodeJS.ErrnoException & { status?: number }) => {
        if (error.status === 404) resolve(false);
        else if (error.status === 416) reject(new Refused(416, "The file is shorter than that."));
        else reject(error);
      })
      .on("directory", () => resolve(false))
      .pipe(response);
    response.once("close", () => resolve(true));
  });
}

/** The site's own page for that, or where there is no site yet, what keeps it from being built. */
async function sendNotFound(folder: string, { response, trouble }: Asked): Promise<void> {
  const page = await readPage(join(folder, "404.html"));
  if (page !== undefined) return sendHtml(response, withOwn(page, trouble), 404);
  const instead = <NoSitePage trouble={trouble} assets={own} />;
  sendHtml(response, withReload(`<!doctype html>\n${renderToString(instead)}\n`), 503);
}

/** A page with the script that loads it again and the faults; the file itself holds neither. */
function withOwn(page: string, trouble: Trouble | null): string {
  if (!trouble) return withReload(page);
  const strip = renderToString(<TroubleStrip trouble={trouble} />);
  const style = `<link rel="stylesheet" href="${own}trouble.css">`;
  return withReload(putBefore(putBefore(page, "</head>", style), "</body>", strip));
}

function withReload(page: string): string {
  return putBefore(page, "</head>", `<script src="${own}reload.js" defer></script>`);
}

/** The last place counts for the end of the body, since a page may speak of one in its text. */
function putBefore(page: string, tag: string, what: string): string {
  const at = tag === "</head>" ? page.indexOf(tag) : page.lastIndexOf(tag);
  return at < 0 ? page + what : page.slice(0, at) + what + page.slice(at);
}
