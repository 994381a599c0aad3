/** The layers of an old version, as far as they may be told: without words of a maker's own. */
import { type Areas, type Coating, coatingOf, placeOf, type Step } from "../../records/steps.ts";
import {
  type KindOfFiring,
  kindsOfFiring,
  type Removal,
  type Resist,
  shelves,
} from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";

/** A glaze as it was written: the name of one that is shown here, a jar's number, or neither. */
export type ToldGlaze =
  | { readonly name: string }
  | { readonly jar: string }
  | { readonly hidden: true };

/** A layer of glaze as it is told. */
export interface ToldCoat extends Omit<Coating, "along" | "detail"> {
  readonly step: "coat";
  readonly glazes: readonly ToldGlaze[];
}

export interface ToldFiring {
  readonly step: "fired";
  /** Null where only its load was named. */
  readonly kind: KindOfFiring | null;
  /** The id of a firing that is shown here; null where none was named, or one that is not. */
  readonly firing: string | null;
  readonly shelf: string | null;
}

export type ToldStep =
  | ToldCoat
  | ToldFiring
  | { readonly step: "resist"; readonly resist: Resist; readonly where: Areas }
  | { readonly step: "remove"; readonly remove: Removal; readonly where: Areas };

/** What of the names in old versions a site shows. */
export interface ShownNames {
  readonly glaze: (id: string) => string | null;
  readonly clay: (id: string) => string | null;
  readonly firing: (id: string) => string | null;
}

/** What is told of a step. */
export function toldStep(step: Step, names: ShownNames): ToldStep {
  switch (step.step) {
    case "resist":
      return { step: "resist", resist: step.resist, where: placeOf(step).where };
    case "remove":
      return { step: "remove", remove: step.remove, where: placeOf(step).where };
    case "fired":
      return { ...firingOf(step.fired, names), shelf: knownShelf(step.shelf) };
    default: {
      const { along: _, detail: __, ...coating } = coatingOf(step);
      const ids = step.step === "glaze" ? [step.glaze] : [step.fade.from, step.fade.to];
      return { step: "coat", glazes: ids.map((id) => glazeOf(id, names)), ...coating };
    }
  }
}

function glazeOf(written: string, { glaze }: ShownNames): ToldGlaze {
  const name = glaze(written);
  if (name !== null) return { name };
  return /^\d{1,4}$/u.test(written) ? { jar: written } : { hidden: true };
}

function firingOf(written: string, { firing }: ShownNames) {
  const kind = kindsOfFiring.find((each) => each === written) ?? null;
  return { step: "fired" as const, kind, firing: kind === null ? firing(written) : null };
}

function knownShelf(shelf: string | undefined): string | null {
  return shelves.find((each) => each === shelf) ?? null;
}

/** A text that is the same for steps that were written alike, a maker's own words aside. */
export function keyOfStep(step: Step): string {
  return JSON.stringify(toldStep(step, asWritten));
}

const asWritten: ShownNames = {
  glaze: idKey,
  clay: idKey,
  firing: idKey,
};

/** A maker's own words in a step: they are compared, and never told. */
export function wordsInStep(step: Step): readonly string[] {
  const words = [
    step.step === "fade" ? step.fade.along : undefined,
    step.step === "fired" ? undefined : step.detail,
    step.step === "fired" && knownShelf(step.shelf) === null ? step.shelf : undefined,
    step.step === "glaze" || step.step === "fade" ? step.over?.join() : undefined,
  ];
  return words.filter((each) => each !== undefined);
}

/** A step before and after; null where it was not there. */
export interface StepChange {
  readonly before: Step | null;
  readonly after: Step | null;
}

/**
 * What became of a coat stack's steps, by the longest row of steps that both have. Of what is between two
 * of these, steps of one kind are taken for the same, in their order.
 */
export function changedSteps(
  before: readonly Step[],
  after: readonly Step[],
): readonly StepChange[] {
  return gapsBetween(before.map(keyOfStep), after.map(keyOfStep)).flatMap(([from, to]) =>
    pairUp(
      from.map((i) => before[i] as Step),
      to.map((i) => after[i] as Step),
    ),
  );
}

function pairUp(before: readonly Step[], after: readonly Step[]): readonly StepChange[] {
  const left = [...before];
  const changes = after.map((step): StepChange => {
    const at = left.findIndex((each) => kindOfStep(each) === kindOfStep(step));
    const [found = null] = at < 0 ? [] : left.splice(at, 1);
    return { before: found, after: step };
  });
  return [...left.map((step): StepChange => ({ before: step, after: null })), ...changes];
}

function kindOfStep({ step }: Step): string {
  return step === "fade" ? "glaze" : step;
}

type Gap = readonly [readonly number[], readonly number[]];

/** The places of two rows that are in no longest common row, gap by gap. */
function gapsBetween(a: readonly string[], b: readonly string[]): readonly Gap[] {
  const longest = commonLengths(a, b);
  const at = (i: number, j: number) => longest[i]?.[j] ?? 0;
  const gaps: [number[], number[]][] = [[[], []]];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) {
      gaps.push([[], []]);
      i += 1;
      j += 1;
    } else if (j >= b.length || (i < a.length && at(i + 1, j) >= at(i, j + 1))) {
      gaps.at(-1)?.[0].push(i);
      i += 1;
    } else {
      gaps.at(-1)?.[1].push(j);
      j += 1;
    }
  }
  return gaps;
}

/** How long the longest common row is of what follows each two places. */
function commonLengths(a: readonly string[], b: readonly string[]): readonly number[][] {
  const lengths = Array.from({ length: a.length + 1 }, () => Array<number>(b.length + 1).fill(0));
  for (let i = a.length - 1; i >= 0; i -= 1)
    for (let j = b.length - 1; j >= 0; j -= 1) {
      const [row = [], below = []] = [lengths[i], lengths[i + 1]];
      row[j] = a[i] === b[j] ? 1 + (below[j + 1] ?? 0) : Math.max(below[j] ?? 0, row[j + 1] ?? 0);
    }
  return lengths;
}
