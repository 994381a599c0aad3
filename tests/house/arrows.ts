/**
 * The plan of the house: what each room may import. A room is a folder of src/, or templates/, or
 * templates/words/ ("words") or templates/drawing/ ("drawing"); its own files it may always import. The files that stand in src/ itself
 * and src/commands/ put the rooms together, so to them every room is open, but not every package.
 * Nothing imports demo/, which draws the demonstration's pictures and is no part of the program.
 */

/** Room by room, the rooms it may import from; "types of" a room: only its types. */
export const arrows: Readonly<Record<string, readonly string[] | "every room">> = {
  terms: [],
  records: ["terms"],
  chemistry: ["terms", "records"],
  firing: ["terms", "records"],
  colour: ["terms", "records"],
  likeness: ["terms", "records", "firing"],
  words: [
    ...["terms", "types of records", "chemistry", "firing", "colour", "types of likeness"],
    "catalogue",
    "changes",
  ],
  checks: ["terms", "records", "chemistry", "firing", "colour", "likeness", "words"],
  reader: ["terms", "records"],
  // What an editor offers says with the site's words what a cone range is.
  editing: ["terms", "records", "reader", "chemistry", "words"],
  asking: ["terms", "records", "reader", "editing"],
  // Speaks with an editor; a command hands over the examination of an archive.
  "language-server": ["terms", "records", "reader", "editing"],
  "leaving-out": ["terms", "records", "types of reader", "chemistry"],
  // A load is judged by the checks, on the archive as the reader would read it with the load in it.
  loads: [...["terms", "records", "reader", "firing", "likeness", "checks", "catalogue", "words"]],
  compiled: [],
  disk: [],
  "local-server": [],
  archive: ["terms", "records", "reader", "disk"],
  // What a request does to an archive: facts, of the archive before and after.
  changes: [
    ...["terms", "records", "reader", "chemistry", "catalogue", "types of likeness"],
    "types of leaving-out",
  ],
  git: ["terms", "records", "reader", "disk"],
  reporting: ["terms", "records", "types of reader", "types of changes", "types of words"],
  photos: ["terms", "colour", "compiled", "disk"],
  catalogue: ["terms", "records", "chemistry", "firing", "colour", "likeness"],
  drawing: ["terms", "types of records", "colour", "catalogue", "words"],
  templates: [
    ...["terms", "types of records", "chemistry", "firing", "colour", "types of likeness"],
    ...["catalogue", "words", "drawing"],
  ],
  publish: [
    ...["terms", "records", "likeness", "catalogue", "templates", "words", "drawing", "photos"],
    ...["compiled", "disk", "local-server"],
  ],
  // Reads and writes the archive as the copy stand does, reads layers on one line and renders records;
  // its pages speak with the site's words and drawings. Photographs that wait to be named lie in a folder for a while.
  desk: [
    ...["terms", "records", "reader", "checks", "loads", "archive", "templates", "words"],
    ...["drawing", "local-server", "disk"],
  ],
  receive: ["terms", "records", "reader", "types of archive", "types of photos", "words"],
  copystand: [
    ...["terms", "records", "types of reader", "archive", "colour", "templates"],
    ...["words", "local-server"],
  ],
  browser: [
    ...["terms", "records", "reader", "chemistry", "firing", "colour", "likeness", "checks"],
    // The tile form says and draws a tile's layers with what its page does.
    ...["words", "drawing", "types of copystand", "types of desk", "types of loads"],
    "types of publish",
  ],
  demo: "every room",
  commands: "every room",
  src: "every room",
};

/** The rooms that may use Node's own modules; all others are pure, or run in a browser. */
export const roomsThatUseNode: readonly string[] = [
  "archive",
  "compiled",
  "copystand",
  "demo",
  "desk",
  "disk",
  "git",
  "language-server",
  "local-server",
  "photos",
  "publish",
  "reporting",
  "commands",
  "src",
];

/** Package by package, the rooms that may import it. */
export const packages: Readonly<Record<string, readonly string[]>> = {
  "@11ty/eleventy": ["publish"],
  "@clack/prompts": ["commands"],
  commander: ["commands", "src"],
  "csv-parse": ["firing", "receive"],
  "csv-stringify": ["publish"],
  "d3-scale": ["templates"],
  "d3-shape": ["templates"],
  esbuild: ["compiled"],
  "fastest-levenshtein": ["records"],
  fflate: ["browser", "publish"],
  "gray-matter": ["archive"],
  "heic-decode": ["photos"],
  "hyparquet-writer": ["publish"],
  "idb-keyval": ["browser"],
  "markdown-it": ["publish", "templates"],
  "ml-fcnnls": ["chemistry"],
  pagefind: ["publish"],
  picocolors: ["commands", "reporting"],
  postcss: ["compiled"],
  preact: ["browser", "copystand", "desk", "drawing", "publish", "templates"],
  "preact-render-to-string": ["copystand", "desk", "publish", "templates"],
  qrcode: ["drawing"],
  "schema-dts": ["templates"],
  send: ["publish"],
  sharp: ["demo", "photos"],
  "sql.js": ["publish"],
  "vscode-languageserver": ["commands", "language-server"],
  "vscode-languageserver-textdocument": ["language-server"],
  yaml: ["reader"],
  yauzl: ["archive"],
  zod: ["publish", "reader", "records"],
  "zxing-wasm": ["photos"],
};

/** Files that only one other file may import. */
export const doors: Readonly<Record<string, string>> = {
  "src/cli.ts": "src/program.ts",
};

/** The one file that computes what it imports: where the compiled program lies, by its sum. */
export const startsTheCompiled = "src/tilebook.mjs";
