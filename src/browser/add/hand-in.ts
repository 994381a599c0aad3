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
