/** The steps of a tile, with the glazes and firings they name found. */
import type { CoatStep, FiredStep, TileStep } from "../../records/archive.ts";
import type { FieldPath, Problem } from "../../records/problem.ts";
import {
  coatingOf,
  type FadeStep,
  type GlazeStep,
  placeOf,
  type Step,
  type FiredStep as WrittenFiring,
} from "../../records/steps.ts";
import { kindsOfFiring } from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";
import type { KnownFirings } from "./firings.ts";
import type { Jars } from "./jars.ts";
import { type Followed, lookUp, type Mention, unknownName } from "./look-up.ts";
import { firingOrKindLookup, type GlazeNames, layerLookup } from "./lookups.ts";

/** What the steps of one tile may name. */
export interface StepNames {
  readonly glazes: GlazeNames;
  readonly jars: Jars;
  readonly firings: KnownFirings;
  /** The id of the tile's set, for the hints. */
  readonly set: string | null;
  /** True where the set's jars could not be read, so that a number may well be one of them. */
  readonly jarsUnknown: boolean;
}

/**
 * Follows the steps of a tile. A step whose glaze or firing was not found is left out.
 *
 * @param file the tile's file
 */
export function followSteps(
  file: string,
  steps: readonly Step[],
  names: StepNames,
): Followed<readonly TileStep[]> {
  const followed = steps.map((step, at) => followStep(file, step, at, names));
  return {
    value: followed.map(({ value }) => value).filter((step) => step !== null),
    problems: followed.flatMap(({ problems }) => problems),
  };
}

function followStep(
  file: string,
  step: Step,
  at: number,
  names: StepNames,
): Followed<TileStep | null> {
  switch (step.step) {
    case "glaze":
      return followCoat(file, step, at, names);
    case "fade":
      return followCoat(file, step, at, names);
    case "fired":
      return followFiring(file, step, at, names);
    case "resist":
    case "remove":
      return { value: { ...step, ...placeOf(step), at }, problems: [] };
  }
}

type Layer = GlazeStep | FadeStep;

function followCoat(
  file: string,
  step: Layer,
  at: number,
  names: StepNames,
): Followed<CoatStep | null> {
  const glazes = glazesOf(step).map(({ path, written }) =>
    followGlaze({ file, path: ["layers", at, ...path], written }, names),
  );
  const over = (step.over ?? []).map((written, i) =>
    followGlaze({ file, path: ["layers", at, "over", i], written }, names),
  );
  const problems = [...glazes, ...over].flatMap((found) => found.problems);
  const [first, second] = glazes.map(({ value }) => value);
  if (typeof first !== "string" || second === null) return { value: null, problems };
  const value: CoatStep = {
    ...coatingOf(step),
    step: "coat",
    at,
    glazes: second === undefined ? [first] : [first, second],
    over: over.map(({ value: id }) => id).filter((id) => id !== null),
  };
  return { value, problems };
}

function glazesOf(step: Layer): readonly { path: FieldPath; written: string }[] {
  if (step.step === "glaze") return [{ path: ["glaze"], written: step.glaze }];
  return [
    { path: ["fade", "from"], written: step.fade.from },
    { path: ["fade", "to"], written: step.fade.to },
  ];
}

function followGlaze(mention: Mention, names: StepNames): Followed<string | null> {
  const inJar = lookUp(names.jars, mention.written);
  if (inJar !== undefined) return { value: inJar, problems: [] };
  const id = lookUp(names.glazes.ids, mention.written);
  if (id !== undefined) return { value: id, problems: [] };
  if (names.jarsUnknown && /^\d+$/u.test(mention.written)) return { value: null, problems: [] };
  const known = new Map([...names.glazes.ids, ...jarNumbers(names.jars)]);
  const lookup = layerLookup(names.glazes, names.set, mention.written);
  return { value: null, problems: [unknownName(mention, known, lookup)] };
}

function jarNumbers(jars: Jars): [string, string][] {
  return [...jars.keys()].map((number) => [number, number]);
}

function followFiring(
  file: string,
  step: WrittenFiring,
  at: number,
  names: StepNames,
): Followed<FiredStep | null> {
  const shelf = step.shelf ?? null;
  const kind = kindsOfFiring.find((known) => known === idKey(step.fired));
  if (kind) return { value: { step: "fired", at, kind, firing: null, shelf }, problems: [] };
  const firing = lookUp(names.firings.ids, step.fired);
  if (firing === undefined) {
    const mention = { file, path: ["layers", at, "fired"], written: step.fired };
    return { value: null, problems: [unknownFiring(mention, names.firings)] };
  }
  const kindOfIt = names.firings.read.get(idKey(firing))?.record.kind;
  if (kindOfIt === undefined) return { value: null, problems: [] };
  return { value: { step: "fired", at, kind: kindOfIt, firing, shelf }, problems: [] };
}

function unknownFiring(mention: Mention, { ids }: KnownFirings): Problem {
  const kinds = kindsOfFiring.map((name) => [name, name] as const);
  return unknownName(mention, new Map([...ids, ...kinds]), firingOrKindLookup);
}
