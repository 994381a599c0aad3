/** The reader and the rules of the build, for the tile form. */
import { examine } from "./add/examine.ts";
import type { ChecksLoaded } from "./add/examined.ts";

(globalThis as ChecksLoaded).tilebookExamine = examine;
