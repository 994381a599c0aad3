/** What the page for typing up paper asks for: to look at a row, to write it, to take layers over. */

import { parseText } from "../../archive/parse-text.ts";
import { fieldsOf } from "../../local-server/body.ts";
import { withGlazeIds } from "../../reader/short-form/meant.ts";
import { shortNames } from "../../reader/short-form/names.ts";
import { renderShortForm } from "../../reader/short-form/render-short-form.ts";
import { type Archive, findById } from "../../records/archive.ts";
import type { SourceMap } from "../../records/read.ts";
import { idKey } from "../../terms/ids.ts";
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
    const { code, set } = fieldsOf(body);
    const wanted = textOf(code).trim();
    const { archive, texts } = await work.read();
    const tile = findById(archive.tiles, wanted);
    if (!tile) return { fault: `There is no tile “${wanted}”.` };
    const { source } = parseText(texts.get(tile.file) ?? "", "markdown");
    const layers = ((source?.layers ?? []) as readonly SourceMap[]).map(notYetFired(archive));
    // Jar 7 of another set may hold another glaze.
    const isOfSet = tile.set !== null && typeof set === "string" && idKey(set) === idKey(tile.set);
    const names = shortNames(archive, tile.set);
    return { line: renderShortForm(isOfSet ? layers : withGlazeIds(layers, names)) };
  },
};

/** The new tile was not in the other's load: of a firing that has a record only the kind is taken over. */
function notYetFired({ firings }: Archive): (layer: SourceMap) => SourceMap {
  return (layer) => {
    const { fired } = layer;
    const firing = typeof fired === "string" ? findById(firings, fired) : undefined;
    return firing ? { fired: firing.record.kind } : layer;
  };
}
