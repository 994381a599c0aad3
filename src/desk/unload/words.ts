/** The words of the choices on the page of unloading. */
import type { Again, Fate } from "../../terms/choices.ts";

export const againWords: Readonly<Record<Again, string>> = {
  yes: "yes",
  changed: "changed",
  no: "no",
};

export const fateWords: Readonly<Record<Fate, string>> = {
  broken: "broken",
  cracked: "cracked",
  exploded: "burst",
  lost: "lost",
  stuck: "stuck to the shelf",
  unreadable: "code cannot be read",
};
