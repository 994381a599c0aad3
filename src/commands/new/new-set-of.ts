/** `tilebook new set`: after another set, or from what is said of it. */
import type { Prompts } from "../../asking/prompts.ts";
import { WrongUsage } from "../failure.ts";
import { newRecord } from "./new-record.ts";
import { type NewSetOptions as NewTermOptions, newSet } from "./new-set.ts";

export interface NewSetOptions extends Omit<NewTermOptions, "from"> {
  readonly from?: string;
}

/** @param words the set's id and, where it follows no other, fields as in `kind=class` */
export async function newSetOf(
  words: readonly string[],
  options: NewSetOptions,
  prompts: Prompts | undefined,
): Promise<number> {
  const { from, name, begins, ends } = options;
  if (from === undefined) {
    const said = Object.entries({ name, begins, ends }).flatMap(([field, value]) =>
      value === undefined ? [] : [[field, value] as const],
    );
    return newRecord(
      "set",
      words,
      { archive: options.archive, begin: Object.fromEntries(said) },
      prompts,
    );
  }
  const [id, ...more] = words;
  if (id === undefined) throw new WrongUsage("Say what the new set's folder in tiles/ is called.");
  if (more.length > 0)
    throw new WrongUsage(
      `“${more.join(" ")}” is too much: with --from, the set before says the rest.`,
    );
  return newSet(id, { ...options, from }, prompts && ((question) => prompts.write(question)));
}
