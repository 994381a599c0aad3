/** What of several subjects is not the same, step by step and line by line. */
import type { Aspect } from "../../likeness/make-up.ts";
import type { Subject, SubjectStep } from "../../publish/beside-file.ts";
import { alignAll, type Row } from "./align.ts";

/** Two steps are as far apart as the share of their facets that differ; a layer is never beside a firing. */
export function distanceOf(a: SubjectStep, b: SubjectStep): number {
  const [first, second] = [new Map(a.facets), new Map(b.facets)];
  if (kindOf(first) !== kindOf(second)) return Number.POSITIVE_INFINITY;
  const aspects = new Set([...first.keys(), ...second.keys()]);
  const apart = [...aspects].filter((aspect) => first.get(aspect) !== second.get(aspect));
  // What a step is counts as much as all the rest: another glaze is another layer before it is a thicker one.
  const most = 2 * aspects.size;
  const weight = apart.reduce((sum, aspect) => sum + (aspect === "what" ? aspects.size : 1), 0);
  return most === 0 ? 0 : Math.min(1, weight / most);
}

/** A layer, a tool, a firing: by what is asked of it. */
function kindOf(facets: ReadonlyMap<Aspect, string | null>): string {
  if (facets.has("coats")) return "layer";
  return facets.has("area") ? "tool" : "firing";
}

export function keyOfStep({ facets }: SubjectStep): string {
  return JSON.stringify(facets);
}

/** A row of steps, and what differs in it. */
export interface StepRow {
  readonly row: Row;
  /** True where some column has no such step. */
  readonly isMissing: boolean;
  /** What differs between those that have it, and is known of all of them. */
  readonly differing: readonly Aspect[];
  /** What is known of some of them and not of others: it may differ. */
  readonly open: readonly Aspect[];
}

/** The steps of all subjects, row by row. */
export function alignSteps(subjects: readonly Subject[]): readonly StepRow[] {
  const columns = subjects.map(({ steps }) => steps);
  return alignAll(columns, distanceOf, keyOfStep).map((row) => {
    const steps = row.flatMap((place, i) => {
      const step = place === null ? undefined : columns[i]?.[place];
      return step ? [new Map(step.facets)] : [];
    });
    const aspects = [...new Set(steps.flatMap((step) => [...step.keys()]))];
    const valuesOf = (aspect: Aspect) => new Set(steps.map((step) => step.get(aspect) ?? null));
    const unlike = aspects.filter((aspect) => valuesOf(aspect).size > 1);
    return {
      row,
      isMissing: steps.length < subjects.length,
      differing: unlike.filter((aspect) => knownIn(valuesOf(aspect)) > 1),
      open: unlike.filter((aspect) => knownIn(valuesOf(aspect)) === 1),
    };
  });
}

function knownIn(values: ReadonlySet<string | null>): number {
  return [...values].filter((value) => value !== null).length;
}

/** A line of a table: what each subject has, undefined where it has none. */
export interface TableRow {
  readonly label: string;
  readonly words: readonly (string | undefined)[];
  readonly differs: boolean;
}

export interface JoinedTable {
  readonly title: string;
  readonly missing: string;
  readonly rows: readonly TableRow[];
}

/** Tables of one title as one, every label once, in the order in which they are met. */
export function joinTables(subjects: readonly Pick<Subject, "tables">[]): readonly JoinedTable[] {
  const titles = [...new Set(subjects.flatMap(({ tables }) => tables.map(({ title }) => title)))];
  return titles.map((title) => {
    const own = subjects.map(({ tables }) => tables.find((table) => table.title === title));
    const missing = own.find((table) => table !== undefined)?.missing ?? "";
    const lines = own.map((table) => new Map<string, string>(table?.lines ?? []));
    const labels = [...new Set(lines.flatMap((each) => [...each.keys()]))];
    const rows = labels.map((label) => {
      const words = lines.map((each) => each.get(label));
      return { label, words, differs: new Set(words).size > 1 };
    });
    return { title, missing, rows };
  });
}
