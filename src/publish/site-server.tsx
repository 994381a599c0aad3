/**
 * Shows a site on this computer alone, tells its open pages to load again, and shows on them what
 * keeps the site from being built.
 */
import { readFile } from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import { basename, dirname, join } from "node:path";
import { renderToString } from "preact-render-to-string";
import sendFile from "send";
import { NoSitePage } from "../../templates/serve/no-site-page.tsx";
import { TroubleStrip } from "../../templates/serve/trouble-strip.tsx";
import { WayToDesk } from "../../templates/serve/way-to-desk.tsx";
import { send, sendAsset, sendHtml } from "../local-server/answers.ts";
import { nowhere, Refused } from "../local-server/door.ts";
import {
  type LocalServer,
  type LocalWork,
  localServer,
  type TakesPictures,
} from "../local-server/local-server.ts";
import { makeView, type SiteShown, type View } from "./site-view.ts";
import type { UnwrittenSites } from "./unwritten-sites.ts";

export interface SiteServer extends LocalServer {
  readonly show: View["show"];
  readonly showWritten: View["showWritten"];
  readonly showUnwritable: View["showUnwritable"];
  /** The same site beside other pages, for another server. */
  readonly workBeside: (desk: BesideTheSite) => LocalWork;
}

/** Pages beside the site, which are never published and may write: their addresses begin with `/desk/`. */
export interface BesideTheSite {
  /** What they must send with whatever they post. */
  readonly token: string;
  /** The most letters that are read of it. */
  readonly longestBody: number;
  /** @throws Refused, and whatever fails */
  readonly get: (path: string, response: ServerResponse) => Promise<void>;
  /** @throws Refused, and whatever fails */
  readonly post: (path: string, body: unknown, response: ServerResponse) => Promise<void>;
  readonly pictures: TakesPictures;
}

export interface SiteServing {
  /** The pages beside the site; the site alone is shown where it is left out. */
  readonly desk?: BesideTheSite;
  /** Styles, fonts and drawings of what is added to pages, by name. */
  readonly assets: ReadonlyMap<string, Uint8Array>;
  /** Is told of what failed and should not have. */
  readonly failed: (error: unknown) => void;
}

/** Where lies what is no part of the site. */
const own = "/_tilebook/";
const beside = "/desk/";

/** A page that was sent before the last change, while it was not listening yet say, loads again as well. */
const script = `const { shown } = document.currentScript.dataset;
new EventSource("${own}events").onmessage = ({ data }) => {
  if (data !== shown) location.reload();
};
`;

/** A server for a folder that may be replaced by another while it runs. */
export function siteServer(folder: string, serving: SiteServing): SiteServer {
  const { desk } = serving;
  const view = makeView();
  const server = localServer(siteWork(folder, view, serving), desk?.token);
  return {
    ...server,
    show: view.show,
    showWritten: view.showWritten,
    showUnwritable: view.showUnwritable,
    workBeside: (other) => siteWork(folder, view, { ...serving, desk: other }),
    close() {
      view.close();
      server.close();
    },
  };
}

function siteWork(folder: string, view: View, { assets, failed, desk }: SiteServing): LocalWork {
  return {
    async get(path, request, response) {
      if (desk && path.startsWith(beside)) await desk.get(path, response);
      else if (path === `${own}events`) view.listen(response);
      else if (path === `${own}reload.js`) send(response, "text/javascript; charset=utf-8", script);
      else if (path.startsWith(own)) sendOwn(assets, path.slice(own.length), response);
      else {
        // Whoever is sent what was read before a change says so, and loads again.
        const [shown, mark] = [view.shown(), view.mark()];
        const { untilWritten } = view;
        const asked = { request, response, shown, mark, untilWritten, hasDesk: desk !== undefined };
        await sendFromSite(folder, fromRoot(path, shown.under), asked);
      }
    },
    failed,
    ...(desk && postsOf(desk)),
  };
}

/** The site itself takes nothing that is posted. */
function postsOf({
  post,
  longestBody,
  pictures,
}: BesideTheSite): Pick<LocalWork, "post" | "longestBody" | "pictures"> {
  return {
    longestBody,
    pictures: {
      largest: pictures.largest,
      async take(path, bytes, response) {
        if (!path.startsWith(beside)) throw nowhere();
        await pictures.take(path, bytes, response);
      },
    },
    async post(path, body, response) {
      if (!path.startsWith(beside)) throw nowhere();
      await post(path, body, response);
    },
  };
}

/** The page for an address that leads nowhere names the path of the published site. */
function fromRoot(path: string, under: string): string {
  return path.startsWith(under) ? path.slice(under.length - 1) : path;
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
  readonly shown: SiteShown;
  readonly mark: string;
  readonly untilWritten: View["untilWritten"];
  readonly hasDesk: boolean;
}

async function sendFromSite(folder: string, path: string, asked: Asked): Promise<void> {
  const name = path.endsWith("/") ? `${path}index.html` : path;
  const { unwritten } = asked.shown;
  if (!unwritten) return sendWritten(folder, name, asked);
  const found = unwritten.find(name.slice(1));
  if (found === "later") {
    await asked.untilWritten();
    await sendWritten(folder, name, asked);
  } else if (!found) sendNotFound(contentOf(unwritten.find("404.html")), asked);
  else if ("at" in found) await streamFile(dirname(found.at), `/${basename(found.at)}`, asked);
  else {
    const content = "make" in found ? await found.make() : found.content;
    if (name.endsWith(".html")) sendPage(content, asked);
    else sendAsset(asked.response, name, content);
  }
}

async function sendWritten(folder: string, name: string, asked: Asked): Promise<void> {
  const notFound = async () => sendNotFound(await readPage(join(folder, "404.html")), asked);
  if (name.endsWith(".html")) {
    const page = await readPage(join(folder, name));
    return page === undefined ? notFound() : sendPage(page, asked);
  }
  if (!(await streamFile(folder, name, asked))) await notFound();
}

function contentOf(file: ReturnType<UnwrittenSites["find"]>): string | undefined {
  return typeof file === "object" && "content" in file ? String(file.content) : undefined;
}

function sendPage(page: string | Uint8Array, asked: Asked, status?: number): void {
  sendHtml(asked.response, withOwn(String(page), asked), status);
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
function sendNotFound(page: string | undefined, asked: Asked): void {
  if (page !== undefined) sendPage(page, asked, 404);
  else {
    const instead = <NoSitePage trouble={asked.shown.trouble} assets={own} />;
    const html = `<!doctype html>\n${renderToString(instead)}\n`;
    sendHtml(asked.response, withDesk(withReload(html, asked), asked), 503);
  }
}

/** A page with the script that loads it again, the way to the desk and the faults; the file itself holds none of them. */
function withOwn(page: string, asked: Asked): string {
  return withTrouble(withDesk(withReload(page, asked), asked), asked);
}

function withTrouble(page: string, { shown: { trouble } }: Asked): string {
  if (!trouble) return page;
  const strip = renderToString(<TroubleStrip trouble={trouble} />);
  return putBefore(putBefore(page, "</head>", styles("trouble")), "</body>", strip);
}

/** Behind the link that skips to the page, which is to be the first; a page without a masthead has none. */
function withDesk(page: string, { hasDesk }: Asked): string {
  const head = page.indexOf('<header class="masthead">');
  const body = page.indexOf("<body>");
  const at = head >= 0 ? head : body + "<body>".length;
  if (!hasDesk || body < 0) return page;
  const way = renderToString(<WayToDesk address={beside} />);
  return putBefore(page.slice(0, at) + way + page.slice(at), "</head>", styles("way-to-desk"));
}

function styles(name: string): string {
  return `<link rel="stylesheet" href="${own}${name}.css">`;
}

function withReload(page: string, { mark }: Asked): string {
  const loader = `<script src="${own}reload.js" data-shown="${mark}" defer></script>`;
  return putBefore(page, "</head>", loader);
}

/** The last place counts for the end of the body, since a page may speak of one in its text. */
function putBefore(page: string, tag: string, what: string): string {
  const at = tag === "</head>" ? page.indexOf(tag) : page.lastIndexOf(tag);
  return at < 0 ? page + what : page.slice(0, at) + what + page.slice(at);
}
