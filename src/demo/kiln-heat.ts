import { type Archive, findById, type TileStep } from "../records/archive.ts";
import type { FiringRecord, Witness } from "../records/firing.ts";
import { type Cone, findHottest } from "../terms/cones.ts";

/** What the kiln did to a tile, over all of its glaze firings. */
export interface Heat {
  readonly cone: Cone | undefined;
  readonly slowlyCooled: boolean;
  readonly reduction: boolean;
  readonly raku: boolean;
}

/** Reads what the kilns did out of a tile's firings. */
export function readHeat(archive: Archive, steps: readonly TileStep[]): Heat {
  const fired = steps.flatMap((step) =>
    step.step === "fired" && step.kind !== "bisque"
      ? [{ ...step, record: findById(archive.firings, step.firing)?.record }]
      : [],
  );
  const cones = fired.flatMap(({ record, shelf }) => {
    const cone = record && coneReached(record, shelf);
    return cone ? [cone] : [];
  });
  return {
    cone: findHottest(cones),
    slowlyCooled: fired.some(({ record }) => record && coolsSlowly(record)),
    reduction: fired.some(({ record }) => record?.atmosphere === "reduction"),
    raku: fired.some(({ kind }) => kind === "raku"),
  };
}

/** The cone that a shelf's witness shows, or the cone that was aimed at. */
export function coneReached(firing: FiringRecord, shelf: string | null): Cone | undefined {
  const witnesses = firing.witness;
  const witness = shelf === null ? undefined : witnesses?.[shelf];
  const any = witness ?? witnesses?.middle ?? Object.values(witnesses ?? {})[0];
  return any ? (witnessCone(any) ?? firing.cone) : firing.cone;
}

function witnessCone(witness: Witness): Cone | undefined {
  if (witness.read === "cone") return witness.cone;
  const reached = [...witness.bends].filter(([, bend]) => bend === "bent" || bend === "down");
  return findHottest(reached.map(([cone]) => cone));
}

/** Whether the kiln was walked down from its top heat, at less than 100 °C an hour. */
function coolsSlowly(firing: FiringRecord): boolean {
  const limit = firing.unit === "F" ? 180 : 100;
  return (firing.schedule ?? []).some(
    (part) => part.rate !== undefined && part.rate < 0 && part.rate > -limit,
  );
}
