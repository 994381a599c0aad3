import { record } from "../archive/archives.ts";
import { testSlips } from "./slips.ts";

const tile = record("layers:\n  - glaze: soot");
const as = (...names: string[]) => Object.fromEntries(names.map((name) => [`tiles/${name}`, tile]));

testSlips("names of files", {
  "as an editor saves it": as("CL-02.md.txt"),
  "twice Markdown": as("CL-02.md.md"),
  "Markdown in full": as("CL-02.markdown"),
  "a text that begins as a record": as("CL-02.txt"),
  "a text that does not": { "tiles/notes.txt": "Thursday: cone packs." },
  "a word processor's": as("CL-02.docx", "CL-03.rtf", "CL-04.pages"),
  "saved beside the record": as("CL-02.md", "CL-02.md.txt"),
  "without an ending": as("CL-02"),
  "a second download": as("CL-02 (1).md"),
  "a second download beside the first": as("CL-02.md", "CL-02 (1).md"),
  "a code with a space, and its photographs": {
    ...as("CL 02.md"),
    "tiles/CL 02.jpg": "",
    "tiles/CL 02.back.jpg": "",
  },
  "a set.md as an editor saves it": { "tiles/evening/set.md.txt": record("name: Evening") },
  "a glaze as an editor saves it": {
    "recipes/glazes/chalk.md.txt": record("name: Chalk\nkind: slip\nbought: {maker: Oxbow}"),
  },
  "a firing as an editor saves it": { "tiles/firings/g-1.md.txt": record("kind: glaze") },
  "a glaze with a space": {
    "recipes/glazes/oxbow blue.md": record("name: Oxbow blue\nkind: slip\nbought: {maker: Oxbow}"),
  },
  "a glaze outside of its folder": { "recipes/chalk.md": tile },
});
