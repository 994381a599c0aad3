/** The desk of an archive, for the command that shows it. */
import { folderFiles } from "../../archive/folder-files.ts";
import { textParser } from "../../archive/parse-text.ts";
import { readArchive } from "../../archive/read-archive.ts";
import { carriedWords } from "../../chemistry/minerals/minerals.ts";
import { archiveNow } from "../../desk/archive-now.ts";
import { type Desk, makeDesk } from "../../desk/desk.ts";
import type { DeskPage } from "../../desk/page.ts";
import { openTray } from "../../desk/photographs/tray.ts";
import type { Elsewhere, TabletDoor } from "../../desk/tablet/tablet.ts";
import { deskWork, type PictureCraft, type TakeIn } from "../../desk/work.ts";
import { makeToken } from "../../local-server/local-server.ts";
import { sniffFormat } from "../../photos/format.ts";
import { takeInPicture } from "../../photos/take-in.ts";
import { readDeskAssets } from "../../publish/assets.ts";
import { asTypedFor } from "../as-typed.ts";

export interface DeskOpened {
  readonly desk: Desk;
  /** The same desk for the tablet that is let in. */
  readonly onTablet: () => Desk;
  /** Something in the archive was changed. */
  readonly changed: () => void;
  /** Removes the photographs that wait to be named. */
  readonly close: () => Promise<void>;
}

/**
 * @param dir the archive's folder
 * @param pages all of them, but in tests
 * @param tablet the door for a tablet; none where it is left out
 */
export async function openDesk(
  dir: string,
  pages?: readonly DeskPage[],
  tablet?: TabletDoor,
): Promise<DeskOpened> {
  const now = archiveNow(() => readArchive(dir, { builtInMaterials: carriedWords }));
  const trial = {
    files: folderFiles(dir),
    reader: { builtInMaterials: carriedWords, texts: textParser },
    asTyped: asTypedFor(dir),
  };
  const tray = openTray();
  const work = deskWork(dir, now, { trial, tray, takeIn, contact, turn });
  const assets = await readDeskAssets();
  const deskFor = (elsewhere?: Elsewhere) =>
    makeDesk({ work, assets, token: makeToken(), ...(elsewhere && { elsewhere }) }, pages);
  return {
    desk: deskFor(tablet),
    onTablet: () => deskFor("on the tablet"),
    changed: now.changed,
    close: tray.close,
  };
}

const takeIn: TakeIn = async (bytes) => {
  const [taken, format] = [await takeInPicture(bytes), sniffFormat(bytes)];
  if (!taken.ok) return whyOf(taken.fault);
  return { bytes: taken.bytes, ending: format === "jpeg" ? "jpg" : (format ?? "jpg") };
};

const contact: PictureCraft["contact"] = async (bytes) => {
  const { contactOf } = await import("../../photos/contact.ts");
  const found = await contactOf(bytes);
  return "fault" in found ? whyOf(found.fault) : found;
};

const turn: PictureCraft["turn"] = async (bytes, by) => {
  const { turnPicture } = await import("../../photos/turn.ts");
  const turned = await turnPicture(bytes, by);
  // What the picture library writes must give nothing away either.
  return "fault" in turned ? whyOf(turned.fault) : takeIn(turned.bytes);
};

function whyOf({ message, hint }: { readonly message: string; readonly hint: string }) {
  return { why: `${message} ${hint}` };
}
