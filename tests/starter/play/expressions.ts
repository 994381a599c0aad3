/** As much of a forge's expressions as our workflows use. */

/** What an expression can name, by the first part of a path. */
export type Context = Readonly<Record<string, unknown>>;

type Token = string;

/**
 * The value of an expression.
 *
 * @param failed whether an earlier step failed, which `success()` and `failure()` ask
 * @throws SyntaxError where it holds something that is not known here
 */
export function evaluate(text: string, context: Context, failed = false): unknown {
  const tokens: Token[] = text.match(/'(?:[^']|'')*'|&&|\|\||[!=]=|[!()]|[\w.-]+|\S/gu) ?? [];
  const value = readOr({ tokens, context, failed });
  if (tokens.length > 0) throw new SyntaxError(`Not known in an expression: ${tokens[0]}`);
  return value;
}

/** A text with each of its expressions as the value it has. */
export function fill(text: string, context: Context): string {
  return text.replace(/\$\{\{(.*?)\}\}/gsu, (_, expression: string) =>
    String(evaluate(expression, context) ?? ""),
  );
}

interface Reading {
  readonly tokens: Token[];
  readonly context: Context;
  readonly failed: boolean;
}

function readOr(reading: Reading): unknown {
  let value = readAnd(reading);
  while (take(reading, "||")) {
    const other = readAnd(reading);
    value = value || other;
  }
  return value;
}

function readAnd(reading: Reading): unknown {
  let value = readComparison(reading);
  while (take(reading, "&&")) {
    const other = readComparison(reading);
    value = value && other;
  }
  return value;
}

function readComparison(reading: Reading): unknown {
  const value = readSingle(reading);
  if (take(reading, "==")) return value === readSingle(reading);
  if (take(reading, "!=")) return value !== readSingle(reading);
  return value;
}

function readSingle(reading: Reading): unknown {
  if (take(reading, "!")) return !readSingle(reading);
  if (take(reading, "(")) {
    const value = readOr(reading);
    take(reading, ")");
    return value;
  }
  const token = reading.tokens.shift() ?? "";
  if (token.startsWith("'")) return token.slice(1, -1).replaceAll("''", "'");
  if (take(reading, "(")) {
    take(reading, ")");
    return askState(token, reading.failed);
  }
  return valueAt(token, reading.context);
}

function take({ tokens }: Reading, token: Token): boolean {
  if (tokens[0] !== token) return false;
  tokens.shift();
  return true;
}

function askState(name: string, failed: boolean): boolean {
  const states = new Map([
    ["always", true],
    ["cancelled", false],
    ["failure", failed],
    ["success", !failed],
  ]);
  const state = states.get(name);
  if (state === undefined) throw new SyntaxError(`Not known in an expression: ${name}()`);
  return state;
}

/** What is not there is nothing, as on the forge. */
function valueAt(path: string, context: Context): unknown {
  return path
    .split(".")
    .reduce<unknown>((from, name) => (from as Context | undefined | null)?.[name], context);
}
