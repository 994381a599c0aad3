/** Hands a draft in, by the way that the studio wants it. */
import { handedIn, packingFailed } from "../../../templates/words/add/form.ts";
import { newFileAddress } from "../../terms/forges.ts";
import { placeOf, stemOf } from "./draft.ts";
import type { Examined } from "./examined.ts";
import { download, type HandedIn, packed, share } from "./hand-in.ts";
import type { FormStore } from "./store.ts";

/** @returns what was done; undefined where nothing was, which is told in its place */
export async function handIn(form: FormStore): Promise<string | undefined> {
  const examined = form.examine();
  if (!examined) return undefined;
  const { by } = form.site.handingIn;
  if (by === "new-file") return openNewFile(form, examined);
  return handInZip(form, examined, by === "share" ? handedIn.shared : undefined);
}

async function filesOf(form: FormStore, { text }: Examined): Promise<HandedIn> {
  const { draft, photo } = form.state;
  const place = placeOf(draft);
  return {
    [`${place}.md`]: new TextEncoder().encode(text),
    ...(photo && { [`${place}.before.jpg`]: await bytesOf(photo) }),
  };
}

async function bytesOf(photo: Blob): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await photo.arrayBuffer());
}

/** @param shared what to say where it was shared; it is downloaded where that is left out */
async function handInZip(
  form: FormStore,
  examined: Examined,
  shared?: (name: string) => string,
  say: (name: string) => string = handedIn.downloaded,
): Promise<string | undefined> {
  const zip = await packed(await filesOf(form, examined), form.root);
  if (!zip) {
    form.show({ told: packingFailed });
    return undefined;
  }
  const name = `${stemOf(form.state.draft)}.zip`;
  const outcome = shared ? await share(name, zip) : "no";
  if (outcome === "put-off") return undefined;
  if (shared && outcome === "shared") return shared(name);
  download(name, zip, "application/zip");
  return say(name);
}

async function openNewFile(form: FormStore, examined: Examined): Promise<string | undefined> {
  const address = newFileOf(form, examined);
  if (address === undefined) return handInZip(form, examined, undefined, handedIn.noForge);
  if (address === "too-long") return handInZip(form, examined, undefined, handedIn.tooLong);
  await savePhotograph(form);
  window.open(address, "_blank", "noopener");
  return handedIn.opened;
}

/** The repository's page for a new file, filled in with the record: see `newFileAddress`. */
export function newFileOf(form: FormStore, { text }: Examined): string | "too-long" | undefined {
  return newFileAddress(form.site.handingIn.repository, `${placeOf(form.state.draft)}.md`, text);
}

/** What the photograph beside a new record is called. */
export function photographName({ state: { draft } }: FormStore): string {
  return `${stemOf(draft)}.before.jpg`;
}

/** Gives the photograph, made anew of its pixels alone, to be added in the repository; nothing where there is none. */
export async function savePhotograph(form: FormStore): Promise<void> {
  const { photo } = form.state;
  if (photo) download(photographName(form), await bytesOf(photo), "image/jpeg");
}
