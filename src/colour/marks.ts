import type { Samples } from "./samples.ts";

/** One number for each sample: 1 where it is marked. */
export type Marks = Uint8Array;

type Size = Pick<Samples, "columns" | "rows">;

/** The indices of all samples that are marked, or that are not. */
export function indicesOf(marks: Marks, value: 0 | 1): number[] {
  const indices: number[] = [];
  for (let index = 0; index < marks.length; index++)
    if (marks[index] === value) indices.push(index);
  return indices;
}

export function join(one: Marks, other: Marks): Marks {
  return one.map((mark, index) => mark | (other[index] ?? 0));
}

/** Marks the samples beside marked ones too, so many times. */
export function widen(marks: Marks, size: Size, steps: number): Marks {
  let current = marks;
  for (let step = 0; step < steps; step++) {
    const before = current;
    current = before.map((mark, index) => (mark || countBeside(before, size, index) > 0 ? 1 : 0));
  }
  return current;
}

/** Takes off each marked patch's outermost samples: what was thin is gone. */
export function narrow(marks: Marks, size: Size): Marks {
  const unmarked = marks.map((mark) => 1 - mark);
  return marks.map((mark, index) => (mark && countBeside(unmarked, size, index) === 0 ? 1 : 0));
}

function countBeside(marks: Marks, { columns }: Size, index: number): number {
  const x = index % columns;
  const left = x > 0 ? (marks[index - 1] ?? 0) : 0;
  const right = x < columns - 1 ? (marks[index + 1] ?? 0) : 0;
  return left + right + (marks[index - columns] ?? 0) + (marks[index + columns] ?? 0);
}

/** The indices of the samples above, below and beside one. */
export function neighbours({ columns, rows }: Size, index: number): number[] {
  const [x, y] = [index % columns, Math.floor(index / columns)];
  const found: number[] = [];
  if (x > 0) found.push(index - 1);
  if (x < columns - 1) found.push(index + 1);
  if (y > 0) found.push(index - columns);
  if (y < rows - 1) found.push(index + columns);
  return found;
}

export function borderIndices({ columns, rows }: Size): number[] {
  const indices: number[] = [];
  for (let x = 0; x < columns; x++) indices.push(x, (rows - 1) * columns + x);
  for (let y = 0; y < rows; y++) indices.push(y * columns, y * columns + columns - 1);
  return indices;
}

/** The middle half across and down; right and bottom lie just outside. */
export function coreOf({ columns, rows }: Size) {
  return {
    left: Math.floor(columns / 4),
    right: Math.ceil((columns * 3) / 4),
    top: Math.floor(rows / 4),
    bottom: Math.ceil((rows * 3) / 4),
  };
}

export function coreIndices(size: Size): number[] {
  const { left, right, top, bottom } = coreOf(size);
  const indices: number[] = [];
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) indices.push(y * size.columns + x);
  }
  return indices;
}
