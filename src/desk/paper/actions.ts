/** What the page for typing up paper asks for: to look at a row, to write it, to take layers over. */

import { parseText } from "../../archive/parse-text.ts";
import { fieldsOf } from "../../local-server/body.ts";
import { renderShortForm } from "../../reader/short-form/render-short-form.ts";
import { findById } from "../../records/archive.ts";
import type { SourceMap } from "../../records/read.ts";
import type { DeskWork } from "../work.ts";
import { lookAt } from "./look.tsx";
import { readTypedTile } from "./typed-tile.ts";
import { parseTypedTile, textOf } from "./typed-tile-request.ts";
import type { LayersLike, LookedAt, RowWritten } from "./types.ts";

export const actions = {
  async look(body: unknown, work: DeskWork): Promise<LookedAt> {
    const archive = await work.read();
    const typed = parseTypedTile(body, archive);
    return lookAt(archive, typed, readTypedTile(archive, typed));
  },

  async write(body: unknown, work: DeskWork): Promise<RowWritten> {
    const archive = await work.read();
    const typed = parseTypedTile(body, archive);
    const read = readTypedTile(archive, typed);
    const looked = lookAt(archive, typed, read);
    return { ...looked, written: read.file ? await work.writeNew([read.file]) : null };
  },

  async like(body: unknown, work: DeskWork): Promise<LayersLike> {
    const code = textOf(fieldsOf(body).code).trim();
    const { archive, texts } = await work.read();
    const tile = findById(archive.tiles, code);
    if (!tile) return { fault: `There is no tile “${code}”.` };
    const { source } = parseText(texts.get(tile.file) ?? "", "markdown");
    return { line: renderShortForm((source?.layers ?? []) as readonly SourceMap[]) };
  },
};
