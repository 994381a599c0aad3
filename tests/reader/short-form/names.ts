/** A set's jars, a studio's glazes and its firings, as lines in short form name them. */
import type { ShortNames } from "../../../src/reader/short-form/names.ts";

export const names: ShortNames = {
  jars: [
    { number: "3", glaze: "tidewrack" },
    { number: "4", glaze: "soot" },
    { number: "5", glaze: "sonder" },
    { number: "7", glaze: "liner" },
    { number: "7b", glaze: "liner-white" },
  ],
  glazes: [
    { id: "liner", name: "Liner" },
    { id: "liner-white", name: "Liner, white" },
    { id: "sonder", name: "Sonder" },
    { id: "soot", name: "Soot" },
    { id: "tape", name: "Tape measure" },
    { id: "tidewrack", name: "Tidewrack" },
    { id: "topaz-2", name: "Soot top" },
    { id: "pale-sky", name: "Pale sky" },
  ],
  firings: [
    { id: "g-1020", kind: "glaze" },
    { id: "b-7", kind: "bisque" },
  ],
};
