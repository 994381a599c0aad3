/** Carries out what was planned and agreed to. */
import { writeChange } from "../../archive/write-fields.ts";
import { takeBack, writeNew } from "../../archive/write-new.ts";
import type { Addition, NewTile } from "../../receive/outcomes.ts";
import { whyNotDone } from "../not-done.ts";

/**
 * Writes the files of a new tile, all or none.
 *
 * @returns why nothing was written of it, where nothing was
 */
export function writeTile(dir: string, { code, files }: NewTile): string | undefined {
  const inTheWay = writeNew(dir, files);
  return inTheWay && `${code} was not taken: ${whyNotDone(inTheWay)}.`;
}

/**
 * Writes what a tile gains, its photographs and into its record: all that was agreed to, or nothing.
 *
 * @returns why nothing was written of it, where nothing was
 */
export function writeAddition(
  dir: string,
  addition: Addition,
  texts: ReadonlyMap<string, string>,
  { isAdded, isChanged }: { readonly isAdded: boolean; readonly isChanged: boolean },
): string | undefined {
  const { tile, file, fields, changes, notes } = addition;
  const pictures = isAdded ? addition.pictures.map((picture) => picture.file) : [];
  const change = {
    fields: [...(isAdded ? fields : []), ...(isChanged ? changes : [])],
    addedNotes: isAdded ? notes : "",
  };
  const inTheWay = writeNew(dir, pictures) ?? changeOrTakeBack();
  return inTheWay && `Nothing was added to ${tile}: ${whyNotDone(inTheWay)}. Receive it once more.`;

  /** Photographs of a record that could not be changed go again. */
  function changeOrTakeBack() {
    if (change.fields.length === 0 && change.addedNotes === "") return undefined;
    let isWritten = false;
    try {
      const record = { file, kind: "tile" as const, asRead: texts.get(file) ?? "" };
      const written = writeChange(dir, record, change);
      isWritten = written.ok;
      return written.ok ? undefined : { because: written.because, file };
    } finally {
      if (!isWritten) takeBack(dir, pictures);
    }
  }
}
