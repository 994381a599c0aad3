/** How a tile leaves the form: as a zip, by the phone's share sheet, or to the repository's own page. */
import { element } from "../parts/element.ts";
import { loadScript } from "../parts/load-script.ts";

/** Files by their paths in the archive. */
export type HandedIn = Readonly<Record<string, Uint8Array<ArrayBuffer>>>;

/** Where the script that packs leaves what it can do. */
export interface ZipLoaded {
  tilebookZip?: (files: HandedIn) => Uint8Array<ArrayBuffer>;
}

/** A zip of some files; undefined where the script for it does not come. */
export async function packed(
  files: HandedIn,
  root: string,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const loaded = globalThis as ZipLoaded;
  if (!loaded.tilebookZip) await loadScript(`${root}assets/add-zip.js`);
  return loaded.tilebookZip?.(files);
}

/** Long enough for the slowest phone to begin to store a file. */
const keptFor = 60_000;

/** Gives a file to whoever sits before the screen. */
export function download(name: string, bytes: Uint8Array<ArrayBuffer>, type: string): void {
  const href = URL.createObjectURL(new Blob([bytes], { type }));
  const link = element("a", { href, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(href), keptFor);
}

/**
 * Opens the share sheet.
 *
 * @returns `no` where this browser has none for such a file, `put-off` where nothing was chosen in it
 */
export async function share(
  name: string,
  zip: Uint8Array<ArrayBuffer>,
): Promise<"shared" | "put-off" | "no"> {
  const files = [new File([zip], name, { type: "application/zip" })];
  if (!navigator.canShare?.({ files })) return "no";
  try {
    await navigator.share({ files });
    return "shared";
  } catch (error) {
    return (error as Error).name === "AbortError" ? "put-off" : "no";
  }
}

/**
 * Forges whose page for a new file can be filled in by its address, and the beginning of it: what they
 * document or their maintainers say of `filename` and `value`. That `HEAD` means the branch that is shown
 * first is from memory.
 */
const newFilePages: Readonly<Record<string, string>> = {
  "codeberg.org": "_new/main",
  "github.com": "new/HEAD",
};

/** Forges refuse longer ones; 8,192 bytes are common practice among web servers, no published source. */
const longestAddress = 8000;

/**
 * The address of the repository's page for a new file, filled in; `too-long` where no forge would take
 * it, undefined for a repository whose pages cannot be filled in.
 *
 * @param file its path in the archive, which must be the whole of the repository
 */
export function newFileAddress(
  repository: string | undefined,
  file: string,
  text: string,
): string | "too-long" | undefined {
  const found = repository === undefined ? undefined : pageOfForge(repository);
  if (found === undefined) return undefined;
  const address = `${found}?${new URLSearchParams({ filename: file, value: text })}`;
  return address.length > longestAddress ? "too-long" : address;
}

function pageOfForge(repository: string): string | undefined {
  if (!URL.canParse(repository)) return undefined;
  const { protocol, hostname, pathname } = new URL(repository);
  const page = newFilePages[hostname.replace(/^www\./u, "")];
  const [, owner, name] = /^\/([^/]+)\/([^/]+?)(?:\.git)?\/?$/u.exec(pathname) ?? [];
  if (protocol !== "https:" || page === undefined || !owner || !name) return undefined;
  return `https://${hostname}/${owner}/${name}/${page}`;
}
