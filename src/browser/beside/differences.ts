/** What of several subjects is not the same, step by step and line by line. */
import type { Aspect } from "../../likeness/make-up.ts";
import type { Subject, SubjectStep, SubjectTable } from "../../publish/beside-file.ts";
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

/** A line of a table, a value for each subject. */
export interface TableRow {
  readonly label: string;
  /** Undefined where nobody knows; "none" where there is nothing of it. */
  readonly words: readonly (string | undefined)[];
  /** Whether two that are known are not the same; of what only some are known it may be so. */
  readonly differs: "yes" | "maybe" | "no";
}

export interface JoinedTable {
  readonly title: string;
  readonly kind: SubjectTable["kind"];
  readonly rows: readonly TableRow[];
}

/** Tables of one title as one, every label once, in the order in which they are met; notes come last. */
export function joinTables(subjects: readonly Pick<Subject, "tables">[]): readonly JoinedTable[] {
  const titles = [...new Set(subjects.flatMap(({ tables }) => tables.map(({ title }) => title)))];
  const joined = titles.map((title) => joinTable(subjects, title));
  return [
    ...joined.filter(({ kind }) => kind !== "notes"),
    ...joined.filter(({ kind }) => kind === "notes"),
  ];
}

function joinTable(subjects: readonly Pick<Subject, "tables">[], title: string): JoinedTable {
  const own = subjects.map(({ tables }) => tables.find((table) => table.title === title));
  const kind = own.find((table) => table !== undefined)?.kind ?? "facts";
  const lines = own.map((table) => table && new Map<string, string>(table.lines));
  const labels = [...new Set(lines.flatMap((each) => [...(each?.keys() ?? [])]))];
  // Of a glaze without a recipe nobody knows how much of anything is in it; with one, there is none.
  const otherwise = (each: unknown) =>
    kind === "parts" && each !== undefined ? "none" : undefined;
  const rows = labels.map((label) => {
    const words = lines.map((each) => each?.get(label) ?? otherwise(each));
    return { label, words, differs: kind === "notes" ? ("no" as const) : howUnlike(words) };
  });
  return { title, kind, rows };
}

function howUnlike(words: readonly (string | undefined)[]): TableRow["differs"] {
  const known = new Set(words.filter((each) => each !== undefined));
  if (known.size > 1) return "yes";
  return words.includes(undefined) && words.length > 1 ? "maybe" : "no";
}
