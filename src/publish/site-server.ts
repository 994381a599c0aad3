/** Shows a site on this computer alone, and tells its open pages to load again. */
import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { join } from "node:path";
import sirv from "sirv";

export interface SiteServer {
  /** Resolves when it listens; rejects where the port is taken. */
  readonly listen: (port: number) => Promise<void>;
  /** Makes every open page load again. */
  readonly reload: () => void;
  readonly close: () => void;
}

const scriptPath = "/.tilebook/reload.js";
const eventsPath = "/.tilebook/events";
const script = `new EventSource("${eventsPath}").onmessage = () => location.reload();\n`;

/** A server for a folder that may be replaced by another while it runs. */
export function siteServer(folder: string): SiteServer {
  const listeners = new Set<ServerResponse>();
  const files = sirv(folder, {
    dev: true,
    etag: true,
    onNoMatch: (_, response) => notFound(folder, response),
  });
  const server = createServer((request, response) => {
    const path = decodePath(request);
    if (path === eventsPath) listen(listeners, response);
    else if (path === scriptPath) send(response, 200, "text/javascript", script);
    else if (/(\/|\.html)$/u.test(path)) sendPage(folder, path, response);
    else files(request, response);
  });
  return {
    listen: (port) =>
      new Promise((resolve, reject) => {
        server.once("error", reject);
        server.listen(port, "localhost", resolve);
      }),
    reload() {
      for (const listener of listeners) listener.write("data: reload\n\n");
    },
    close() {
      for (const listener of listeners) listener.end();
      server.close();
      server.closeAllConnections();
    },
  };
}

function decodePath({ url = "/" }: IncomingMessage): string {
  const path = new URL(url, "http://localhost").pathname;
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

function listen(listeners: Set<ServerResponse>, response: ServerResponse): void {
  response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
  response.write("\n");
  listeners.add(response);
  response.on("close", () => listeners.delete(response));
}

function send(response: ServerResponse, status: number, type: string, body: string): void {
  response.writeHead(status, {
    "content-type": `${type}; charset=utf-8`,
    "cache-control": "no-store",
  });
  response.end(body);
}

/** A page with the script that loads it again; the file itself does not hold it. */
async function sendPage(folder: string, path: string, response: ServerResponse): Promise<void> {
  const name = path.endsWith("/") ? `${path}index.html` : path;
  if (name.split("/").includes("..")) return notFound(folder, response);
  try {
    send(response, 200, "text/html", withReload(await readFile(join(folder, name), "utf8")));
  } catch {
    await notFound(folder, response);
  }
}

async function notFound(folder: string, response: ServerResponse): Promise<void> {
  const page = await readFile(join(folder, "404.html"), "utf8").catch(
    () =>
      "<!doctype html><title>Not built yet</title><p>There is no such page, or no site yet.</p>",
  );
  send(response, 404, "text/html", withReload(page));
}

function withReload(page: string): string {
  const tag = `<script src="${scriptPath}" defer></script>`;
  return page.includes("</head>") ? page.replace("</head>", `${tag}</head>`) : page + tag;
}
