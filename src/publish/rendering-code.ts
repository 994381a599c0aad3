/** Which code renders: pages that other code made are made anew. */
import { codeOf, readOwnPackage } from "../compiled/own-files.ts";
import { sumOf } from "./sum.ts";

/** The rooms that take part in a page, from its records on. */
const rooms = [
  ...["terms", "records", "chemistry", "firing", "colour", "likeness", "catalogue"],
  ...["templates", "publish"],
];

/** The sum of the code that makes pages of records, and of the packages that it uses. */
export function renderingCode(): string {
  return sumOf(JSON.stringify([codeOf(rooms), readOwnPackage().dependencies]));
}
