import { readFile, stat } from "node:fs/promises";
import { createServer, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize, sep } from "node:path";

/** A folder being served: the address of its root, with a slash at its end, and the way to stop. */
export type ServedFolder = { readonly address: string; readonly stop: () => Promise<void> };

const types: Readonly<Record<string, string>> = {
  ".css": "text/css; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".jpg": "image/jpeg",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
  ".webp": "image/webp",
  ".woff2": "font/woff2",
  ".xml": "application/xml",
};

/**
 * Serves a folder over http on this machine alone, as a plain static host does: index.html for a
 * folder, 404.html with status 404 for what is not there.
 * @param folder the folder to serve
 * @param under the path it stands under, with a slash at both ends
 */
export async function serveFolder(folder: string, under = "/"): Promise<ServedFolder> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    void answer(response, folder, under, pathname);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const stop = () =>
    new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { address: `http://127.0.0.1:${port}${under}`, stop };
}

async function answer(
  response: ServerResponse,
  folder: string,
  under: string,
  pathname: string,
): Promise<void> {
  const file = await findFile(folder, under, pathname);
  const sent = file ?? join(folder, "404.html");
  const body = await readFile(sent).catch(() => Buffer.from("Not found"));
  const type = types[extname(sent)] ?? "application/octet-stream";
  response.writeHead(file ? 200 : 404, { "content-type": type }).end(body);
}

/** The file that a path of the site means, if it lies in the folder. */
async function findFile(
  folder: string,
  under: string,
  pathname: string,
): Promise<string | undefined> {
  if (!pathname.startsWith(under)) return undefined;
  const path = join(folder, normalize(decodeURIComponent(pathname.slice(under.length))));
  if (path !== join(folder) && !path.startsWith(join(folder, sep))) return undefined;
  const found = await stat(path).catch(() => undefined);
  if (found?.isDirectory()) return findFile(path, "/", "/index.html");
  return found && path;
}
