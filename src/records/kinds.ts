/** Every kind of record, where its file lies, and its schema. */
import type * as z from "zod";
import { claySchema } from "./clay.ts";
import { firingSchema } from "./firing.ts";
import { glazeSchema } from "./glaze.ts";
import { materialSchema } from "./material.ts";
import { pageSchema } from "./page.ts";
import { setSchema } from "./set.ts";
import { studioSchema } from "./studio.ts";
import { tileSchema } from "./tile.ts";

export interface RecordKind {
  readonly name: "tile" | "set" | "firing" | "glaze" | "clay" | "material" | "page" | "studio";
  /** Where its file lies, in the archive. */
  readonly file: string;
  /** What one is, in a sentence. */
  readonly sentence: string;
  readonly schema: z.ZodType;
}

export const recordKinds: readonly RecordKind[] = [
  {
    name: "tile",
    file: "tiles/<set>/<code>.md",
    sentence: "A test tile: its file is named after the code on its back.",
    schema: tileSchema,
  },
  {
    name: "set",
    file: "tiles/<set>/set.md",
    sentence: "A class, a term or a series of tests, with what holds for all of its tiles.",
    schema: setSchema,
  },
  {
    name: "firing",
    file: "tiles/firings/<id>.md",
    sentence: "One kiln load.",
    schema: firingSchema,
  },
  {
    name: "glaze",
    file: "recipes/glazes/<id>.md",
    sentence: "Any coating, bought or mixed here: glaze, underglaze, slip, oxide wash, onglaze.",
    schema: glazeSchema,
  },
  {
    name: "clay",
    file: "recipes/clays/<id>.md",
    sentence: "A clay body.",
    schema: claySchema,
  },
  {
    name: "material",
    file: "recipes/materials/<id>.md",
    sentence: "A raw material with its own formula or analysis.",
    schema: materialSchema,
  },
  {
    name: "page",
    file: "pages/<name>.md",
    sentence:
      "A page in the studio's own words, such as how you teach or when you are open: below its title, in Markdown.",
    schema: pageSchema,
  },
  {
    name: "studio",
    file: "studio.yaml",
    sentence: "The studio itself: one file at the top of the archive.",
    schema: studioSchema,
  },
];
