import { record } from "../archive/archives.ts";
import { testSlips } from "./slips.ts";

/** A tile with these fields. */
const tile = (yaml: string) => ({ "tiles/WL-002.md": record(yaml) });

testSlips("form", {
  "no space after the colon": tile("maker:m01\nlayers:\n  - glaze: soot"),
});
