/** All in which two make-ups differ but the order of their steps. */
import { type Parts, partsOf, stepKey } from "./change.ts";
import type { Aspect, Facet, MakeUp } from "./make-up.ts";

export interface MakeUpDifferences {
  /** Known of both, and not the same; `what` where one has a step that the other lacks. */
  readonly differ: readonly Aspect[];
  /** Known of one alone. */
  readonly unknown: readonly Aspect[];
}

/** Steps are held beside each other by what they put on or did, wherever they come. */
export function makeUpDifferences(a: MakeUp, b: MakeUp): MakeUpDifferences {
  const [one, other] = withoutShared(partsOf(a), partsOf(b));
  const [values, others] = [valuesOf(one), valuesOf(other)];
  const keys = [...new Set([...values.keys(), ...others.keys()])];
  const unlike = keys.filter((key) => values.get(key)?.value !== others.get(key)?.value);
  const isKnown = (key: string) => Boolean(values.get(key)?.value && others.get(key)?.value);
  const isLack = (key: string) => aspectOf(key) === "what";
  return {
    differ: aspectsOf(unlike.filter((key) => isKnown(key) || isLack(key))),
    unknown: aspectsOf(
      unlike.filter((key) => !isKnown(key) && !isLack(key) && isOfSharedStep(key, values, others)),
    ),
  };
}

/** Leaves out what both have alike, so that of two layers of one glaze each is held beside its own. */
function withoutShared(a: Parts, b: Parts): readonly [Parts, Parts] {
  const left = b.steps.map(stepKey);
  const own: (readonly Facet[])[] = [];
  for (const step of a.steps) {
    const place = left.indexOf(stepKey(step));
    if (place < 0) own.push(step);
    else left.splice(place, 1);
  }
  const rest = new Map<string, number>();
  for (const key of left) rest.set(key, (rest.get(key) ?? 0) + 1);
  const others = b.steps.filter((step) => {
    const times = rest.get(stepKey(step)) ?? 0;
    rest.set(stepKey(step), times - 1);
    return times > 0;
  });
  return [
    { whole: a.whole, steps: own },
    { whole: b.whole, steps: others },
  ];
}

function aspectsOf(keys: readonly string[]): readonly Aspect[] {
  return [...new Set(keys.map(aspectOf))];
}

function aspectOf(key: string): Aspect {
  return (JSON.parse(key) as [string, Aspect])[1];
}

/** Every facet under what it is of: the whole tile, or the first, second or further step of its kind. */
function valuesOf({ whole, steps }: Parts): ReadonlyMap<string, Facet> {
  const seen = new Map<string, number>();
  const values = new Map(whole.map((facet) => [keyOf("", facet.aspect), facet]));
  for (const step of steps) {
    const what = step.find(({ aspect }) => aspect === "what")?.value ?? "";
    const place = (seen.get(what) ?? 0) + 1;
    seen.set(what, place);
    for (const facet of step) values.set(keyOf(`${place} ${what}`, facet.aspect), facet);
  }
  return values;
}

function keyOf(step: string, aspect: Aspect): string {
  return JSON.stringify([step, aspect]);
}

/** Of a step that one of them lacks it is enough to say so. */
function isOfSharedStep(
  key: string,
  values: ReadonlyMap<string, Facet>,
  others: ReadonlyMap<string, Facet>,
): boolean {
  const [step] = JSON.parse(key) as [string, Aspect];
  const what = keyOf(step, "what");
  return values.has(what) === others.has(what);
}
