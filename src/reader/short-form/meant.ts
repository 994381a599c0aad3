/** What a step means once its names are followed, as the catalogue and its words have it. */
import type { TileStep } from "../../records/archive.ts";
import type { Source, SourceMap } from "../../records/read.ts";
import { coatingOf, placeOf, type Step } from "../../records/steps.ts";
import { kindsOfFiring } from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";
import { findGlaze, type ShortNames } from "./names.ts";

/**
 * @param at its place among the steps of the tile
 * @param names those that the step was read with, so that all of its names are known
 */
export function meantBy(step: Step, names: ShortNames, at: number): TileStep {
  if (step.step === "resist" || step.step === "remove") return { ...step, ...placeOf(step), at };
  if (step.step === "fired") return firingMeant(step, names, at);
  const glazes = step.step === "glaze" ? [step.glaze] : [step.fade.from, step.fade.to];
  const [first = "", second] = glazes.map((written) => idOf(written, names));
  return {
    ...coatingOf(step),
    step: "coat",
    at,
    glazes: second === undefined ? [first] : [first, second],
    over: (step.over ?? []).map((written) => idOf(written, names)),
  };
}

function firingMeant(
  { fired, shelf }: Extract<Step, { step: "fired" }>,
  { firings }: ShortNames,
  at: number,
): TileStep {
  const kind = kindsOfFiring.find((known) => known === idKey(fired));
  if (kind) return { step: "fired", at, kind, firing: null, shelf: shelf ?? null };
  const firing = firings.find(({ id }) => idKey(id) === idKey(fired));
  return {
    ...{ step: "fired", at, kind: firing?.kind ?? "glaze" },
    ...{ firing: firing?.id ?? fired, shelf: shelf ?? null },
  };
}

/**
 * The layers with every glaze by its id, so that they mean the same in a set whose jars have other numbers.
 *
 * @param layers as a record has them
 * @param names of the set that the record lies in
 */
export function withGlazeIds(
  layers: readonly SourceMap[],
  names: ShortNames,
): readonly SourceMap[] {
  const named = (value: Source): Source =>
    typeof value === "string"
      ? idOf(value, names)
      : Array.isArray(value)
        ? value.map(named)
        : value;
  return layers.map((layer) => {
    const { glaze, fade, over, ...rest } = layer;
    return {
      ...(glaze !== undefined && { glaze: named(glaze) }),
      ...(isMap(fade) && {
        fade: { ...fade, from: named(fade.from ?? ""), to: named(fade.to ?? "") },
      }),
      ...rest,
      ...(over !== undefined && { over: named(over) }),
    };
  });
}

function isMap(value: Source | undefined): value is SourceMap {
  return typeof value === "object" && !Array.isArray(value);
}

function idOf(written: string, names: ShortNames): string {
  const found = findGlaze(names, [
    { text: written, from: 0, to: 0, isQuoted: true, isAfterComma: false },
  ]);
  return "glaze" in found ? found.glaze : written;
}
