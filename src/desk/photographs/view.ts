/** The contact sheet: every photograph that is kept, with the code that is proposed for it. */
import { inOrderOfNames, matchPhotographs } from "../../loads/match-photographs.ts";
import type { Archive } from "../../records/archive.ts";
import type { DeskArchive } from "../types.ts";
import { codeOfLabel, orderOf } from "./codes.ts";
import { whyNotWritten } from "./place.ts";
import type { Tray } from "./tray.ts";
import type { PhotographView } from "./types.ts";
import { matchWords, strangeWords } from "./words.ts";

/** @param of whose order is used; null for codes in the frames alone */
export function viewSheet(
  desk: DeskArchive,
  tray: Pick<Tray, "all" | "named">,
  of: string | null,
): readonly PhotographView[] {
  const { archive } = desk;
  const frames = inOrderOfNames([
    ...tray.all().map((kept) => ({ ...readIn(archive, kept.codes), name: kept.name, kept })),
    ...tray.named().map(({ name, code }) => ({ name, read: [code], strange: 0, kept: undefined })),
  ]);
  const order = of === null ? undefined : orderOf(archive, of);
  const matches = matchPhotographs(frames, order?.tiles ?? []);
  return frames.flatMap(({ kept, name, strange }, i) => {
    const match = matches[i];
    if (!kept || !match) return [];
    const why = match.code === null ? undefined : whyNotWritten(desk, match.code, "result");
    const words = matchWords(match, order?.words ?? null, why) + strangeWords(strange);
    return [{ id: kept.id, name, code: why === undefined ? match.code : null, words }];
  });
}

/** The archive's codes among those that lie in a frame, and how many others there are. */
function readIn(archive: Archive, texts: readonly string[]) {
  const codes = texts.map((text) => codeOfLabel(text, archive));
  const read = [...new Set(codes.filter((code) => code !== undefined))];
  return { read, strange: codes.filter((code) => code === undefined).length };
}
