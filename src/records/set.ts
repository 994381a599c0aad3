/** A set: a class, a term, a series of tests. */
import type * as z from "zod";
import { kindsOfSet } from "../terms/choices.ts";
import { longestList } from "../terms/limits.ts";
import * as f from "./fields.ts";
import { sharedTileFields } from "./tile.ts";

const defaults = f.fields(sharedTileFields);

export const setSchema = f.fields({
  name: f.required("The name people call it by.", f.text()),
  kind: f.optional("A class, a series of tests or a term.", f.choice(kindsOfSet)),
  teacher: f.optional("Who leads it: a key of `makers:` in studio.yaml.", f.reference("maker")),
  begins: f.optional("Its first day.", f.day()),
  ends: f.optional("Its last day.", f.day()),
  listed: f.optional(
    "no for a set that is reached only by its own link; yes if left out.",
    f.yesNo(),
  ),
  link: f.optional(
    "The last part of an unlisted set's address, which it must have: letters and digits drawn at random, as the command “check --fix” writes them.",
    f.token(),
  ),
  defaults: f.optional(
    "What holds for every tile of the set that does not say otherwise.",
    defaults,
  ),
  jars: f.optional("Which glaze is in which numbered jar: 7: tidewrack.", jars()),
  codes: f.optional(
    "Codes reserved for the set: one or a list, or ranges such as TB-101..TB-140.",
    f.boundedCodes(f.oneOrMany(f.codes(), longestList)),
  ),
  control: f.optional("The code of the tile whose twin goes into every load.", f.reference("tile")),
});

/** Glazes by the number of their jar: 7, 7b or a name of its own. */
function jars() {
  return f.mapOf(f.reference("glaze")).superRefine((glazes, context) => {
    for (const jar of Object.keys(glazes)) {
      const [, number, glaze] = runTogether.exec(jar) ?? [];
      if (glaze === undefined) continue;
      const message = `“${jar}” is read as the number of a jar, all of it: there is no colon with a space behind “${number}”`;
      const hint = `If “${glaze}” is the glaze in jar ${number}, write “${number}: ${glaze}”; a number may have two letters behind it, as in 7b.`;
      context.addIssue({
        code: "custom",
        path: [jar],
        message: `${message}\n${hint}`,
        params: { code: "no-colon", atKey: true },
      });
    }
  });
}

/** A number, and behind it more than tells two jars of one number apart: a glaze's id. */
const runTogether = /^(\d+)[:：﹕]*((?:\p{L}{3}|\p{L}{1,2}-)[\p{L}\d.-]*)/u;

export type SetRecord = z.output<typeof setSchema>;
export type SetDefaults = z.output<typeof defaults>;
