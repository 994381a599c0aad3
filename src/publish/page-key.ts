/**
 * Keys of pages: a page is made of its component and its props and of nothing else, so it is the same
 * as long as its key is. Making a key renders nothing.
 */
import type { Page } from "./page.ts";
import { sumOf } from "./sum.ts";

/** The sums of objects that were met before. Only frozen ones are kept, as those of the catalogue are. */
const sums = new WeakMap<object, string>();

/**
 * The key of a page, a sum.
 *
 * @param code the version of the code that renders
 * @throws TypeError where the props hold something of which no sum can be made, such as a function:
 *   a page that depends on such a thing could go stale without anybody's notice
 */
export function keyOfPage({ path, component, props }: Page, code: string): string {
  try {
    return sumOf(`${code}\n${component.name}\n${describe(props())}`);
  } catch (error) {
    throw new TypeError(`No key can be made of the page ${path}: ${(error as Error).message}`);
  }
}

/**
 * A value as a text that is the same for equal values, and for no others. A field that is undefined is
 * one that is not there.
 */
function describe(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value === "number") return Object.is(value, -0) ? "-0" : String(value);
  if (typeof value === "boolean" || value === null || value === undefined) return String(value);
  if (typeof value !== "object") throw new TypeError(`it holds a ${typeof value}`);
  return Object.isFrozen(value) ? sumOfFrozen(value) : describeInside(value);
}

/** What is frozen is shared by many pages: its sum is made once. */
function sumOfFrozen(value: object): string {
  const known = sums.get(value);
  if (known !== undefined) return known;
  const sum = `#${sumOf(isPlain(value) ? JSON.stringify(value) : describeInside(value))}`;
  sums.set(value, sum);
  return sum;
}

/** Whether JSON, which is the quickest way to describe a value, leaves out nothing of it. */
function isPlain(value: unknown): boolean {
  switch (typeof value) {
    case "string":
    case "boolean":
      return true;
    case "number":
      return Number.isFinite(value) && !Object.is(value, -0);
    case "object":
      if (value === null) return true;
      return Array.isArray(value) ? value.every(isPlain) : isPlainObject(value);
    default:
      return false;
  }
}

function isPlainObject(value: object): boolean {
  if (!hasFieldsAlone(value)) return false;
  for (const name in value) {
    const inside = (value as Record<string, unknown>)[name];
    if (inside !== undefined && !isPlain(inside)) return false;
  }
  return true;
}

/** Whether an object is nothing but its fields, and no map, no day and nothing that knows more. */
function hasFieldsAlone(value: object): boolean {
  const kind: unknown = Object.getPrototypeOf(value);
  return kind === Object.prototype || kind === null;
}

function describeInside(value: object): string {
  if (Array.isArray(value)) return `[${value.map(describe).join()}]`;
  if (value instanceof Map) return `Map${describeInside([...value])}`;
  if (!hasFieldsAlone(value)) throw new TypeError(`it holds a ${value.constructor.name}`);
  let fields = "";
  for (const name in value) {
    const inside = (value as Record<string, unknown>)[name];
    if (inside !== undefined) fields += `${JSON.stringify(name)}:${describe(inside)},`;
  }
  return `{${fields}}`;
}
