/** A line that begins in a column where no field and no entry of a list begins: by how many spaces. */
import type { FaultAt } from "./yaml-words.ts";

/** A column in which a line may begin, and what stands there above it. */
interface Column {
  readonly column: number;
  readonly name: string;
  /** Whether an entry of a list begins there, with its dash. */
  readonly isEntry: boolean;
}

/**
 * Says by how many spaces a line is out of step with those above it.
 *
 * @param lineStart where the line begins
 * @returns undefined where the line may begin where it does
 */
export function describeIndent(yaml: string, lineStart: number): FaultAt | undefined {
  const [own] = columnsOf(lineAt(yaml, lineStart));
  if (!own) return undefined;
  const { open, opensMore } = openColumns(yaml.slice(0, lineStart));
  if (opensMore && open.every(({ column }) => column < own.column)) return undefined;
  const like = open.filter(({ isEntry }) => isEntry === own.isEntry);
  const away = ({ column }: Column) => Math.abs(column - own.column);
  const least = Math.min(...like.map(away));
  if (like.length === 0 || least === 0) return undefined;
  return outOfStep(
    lineStart + own.column,
    own.column,
    like.filter((column) => away(column) === least),
  );
}

function outOfStep(offset: number, indent: number, nearest: readonly Column[]): FaultAt {
  const ways = nearest.map(({ column, name }) => ({ by: indent - column, name }));
  return {
    offset,
    code: "bad-indent",
    message: `This line begins ${ways.map(({ by }) => sayHowFar(by)).join(", or ")}, so it is not clear what it belongs to`,
    hint: `${ways.map(sayWhatToDo).join("; or ")}.`.replace(/^./u, (letter) =>
      letter.toUpperCase(),
    ),
  };
}

function sayHowFar(by: number): string {
  return `${spaces(by)} too far to the ${by > 0 ? "right" : "left"}`;
}

function sayWhatToDo({ by, name }: { by: number; name: string }): string {
  const what = by > 0 ? `take ${spaces(by)} away` : `put ${spaces(by)} more before it`;
  return `${what}, so that it begins right under “${name}”`;
}

function spaces(by: number): string {
  return Math.abs(by) === 1 ? "1 space" : `${Math.abs(by)} spaces`;
}

/** The columns that are still open after some lines: a line closes all that lie further in. */
function openColumns(text: string): { open: readonly Column[]; opensMore: boolean } {
  let open: readonly Column[] = [];
  let opensMore = true;
  for (const line of text.split("\n")) {
    const columns = columnsOf(line);
    const indent = columns[0]?.column;
    if (indent === undefined) continue;
    open = [...open.filter(({ column }) => column < indent), ...columns];
    opensMore = /[:|>-]$/u.test(line.trimEnd());
  }
  return { open, opensMore };
}

/** Where a line begins, and what stands behind each dash at its beginning. */
function columnsOf(line: string): Column[] {
  const columns: Column[] = [];
  let column = line.search(/[^ ]/u);
  if (column < 0 || line[column] === "#") return [];
  for (;;) {
    const rest = line.slice(column);
    const dash = /^-[ ]+(?=\S)/u.exec(rest)?.[0];
    columns.push({ column, name: nameOf(rest), isEntry: /^-(?: |$)/u.test(rest) });
    if (dash === undefined) return columns;
    column += dash.length;
  }
}

function nameOf(text: string): string {
  return /^(?:- +)*[^:]{1,30}/u.exec(text)?.[0].trim() ?? "";
}

function lineAt(yaml: string, start: number): string {
  const end = yaml.indexOf("\n", start);
  return yaml.slice(start, end < 0 ? yaml.length : end);
}
