import { type Archive, type Filed, findById } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import type { GlazeRule } from "../check.ts";

type Glaze = Filed<GlazeRecord>;

export const blendInACircle: GlazeRule = {
  of: "glaze",
  name: "blend-in-a-circle",
  severity: "error",
  explains: "A blend is not made of itself, however many blends come between.",
  find: (archive, glaze) => {
    const circle = findCircle(archive, glaze);
    if (!circle || circle.some((other) => compareIds(other.id, glaze.id) < 0)) return [];
    const next = circle[1] ?? glaze;
    const part = glaze.record.blend?.findIndex(({ glaze: id }) => idKey(id) === idKey(next.id));
    const way = [...circle, glaze].map(({ id }) => id).join(" → ");
    return [
      {
        path: ["blend", part ?? 0, "glaze"],
        message: `${glaze.id} is blended out of itself: ${way}`,
        hint: "Follow the blends and put right the one that names the wrong glaze.",
      },
    ];
  },
};

/** The shortest way from a glaze through blends back to it, without the return; breadth first. */
function findCircle(archive: Archive, start: Glaze): readonly Glaze[] | undefined {
  const cameFrom = new Map<Glaze, Glaze>();
  const ahead = [start];
  for (const at of ahead) {
    for (const part of partsOf(archive, at)) {
      if (part === start) return wayTo(at, cameFrom);
      if (cameFrom.has(part)) continue;
      cameFrom.set(part, at);
      ahead.push(part);
    }
  }
  return undefined;
}

function wayTo(end: Glaze, cameFrom: ReadonlyMap<Glaze, Glaze>): readonly Glaze[] {
  const back: Glaze[] = [];
  for (let at: Glaze | undefined = end; at; at = cameFrom.get(at)) back.push(at);
  return back.reverse();
}

function partsOf(archive: Archive, glaze: Glaze): readonly Glaze[] {
  return (glaze.record.blend ?? []).flatMap(({ glaze: id }) => findById(archive.glazes, id) ?? []);
}
