/** What makes tiles alike or unlike, in words. */
import type { Aspect } from "../../../src/likeness/make-up.ts";
import { listed } from "../english/numbers.ts";

const unwritten: Readonly<Record<Aspect, string>> = {
  area: "where it lies",
  atmosphere: "the kiln’s atmosphere",
  bisque: "how the bisque was fired",
  clay: "the clay",
  coats: "how many coats",
  cone: "the cone",
  cooling: "how the kiln cooled",
  dipping: "how long it was dipped",
  dried: "how dry it was",
  fire: "what heated the kiln",
  shape: "the shape",
  texture: "the texture",
  thickness: "how thick it is",
  way: "how it was put on",
  what: "what was done",
};

/** `how many coats`: what an aspect is of. */
export function aspectWords(aspect: Aspect): string {
  return unwritten[aspect];
}

/** `not recorded: how many coats and how the kiln cooled`; nothing where all is known. */
export function unwrittenWords(unknown: readonly Aspect[]): string {
  return unknown.length === 0
    ? ""
    : `not recorded: ${listed(unknown.map((aspect) => unwritten[aspect]))}`;
}
