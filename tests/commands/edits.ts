/** Edits of an archive and of its site, as people make them, for a test to choose from at random. */
import {
  appendFileSync,
  existsSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import fc from "fast-check";

/** An edit, told so that a failing test can say what was done. */
export interface Edit {
  readonly what: string;
  readonly make: (archive: string) => void;
}

const records = [
  "studio.yaml",
  "recipes/clays/buff.md",
  ...["soot", "liner", "grå"].map((id) => `recipes/glazes/${id}.md`),
  "tiles/firings/g-1.md",
  "tiles/evening/set.md",
  "tiles/hidden/set.md",
  ...["evening/EV-1", "evening/EV-2", "evening/EV-3", "hidden/HID-1"].map((id) => `tiles/${id}.md`),
  "tiles/Blå-7.md",
];

const tiles = records.filter((file) => /[A-Zå]-\d\.md$/u.test(file));

/** Wherever a record lies: an edit before may have taken it away, and then there is nothing to do. */
function edit(what: string, file: string, make: (path: string, archive: string) => void): Edit {
  return {
    what,
    make: (archive) => {
      const path = join(archive, file);
      if (existsSync(path)) make(path, archive);
    },
  };
}

function replace(what: string, file: string, from: RegExp, to: string): Edit {
  return edit(what, file, (path) =>
    writeFileSync(path, readFileSync(path, "utf8").replace(from, to)),
  );
}

const words = fc.stringMatching(/^[a-zé]{1,12}( [a-z]{1,9}){0,3}$/u);
const anyRecord = fc.constantFrom(...records.filter((file) => file.endsWith(".md")));
const anyTile = fc.constantFrom(...tiles);

const notes = fc
  .tuple(anyRecord, words)
  .map(([file, said]) =>
    edit(`“${said}” below ${file}`, file, (path) => appendFileSync(path, `\n${said}\n`)),
  );

const names = fc
  .tuple(anyRecord, words)
  .map(([file, name]) =>
    replace(`${file} gets the name ${name}`, file, /^name: .*/mu, `name: ${name}`),
  );

const fields = fc.constantFrom(
  replace("another cone", "tiles/firings/g-1.md", /^cone: .*/mu, "cone: 5"),
  replace("the day of a load", "tiles/firings/g-1.md", /^on: .*/mu, "on: 2026-10-21"),
  replace(
    "a tile into the load",
    "tiles/firings/g-1.md",
    /bottom: \[EV-2\]/u,
    "bottom: [EV-2, EV-3]",
  ),
  replace("three coats", "tiles/evening/EV-1.md", /coats: 2/u, "coats: 3"),
  replace("as before", "tiles/evening/EV-1.md", /coats: 3/u, "coats: 2"),
  replace("another glaze", "tiles/hidden/HID-1.md", /glaze: soot/u, "glaze: grå"),
  replace("another result", "tiles/evening/EV-2.md", /surface: gloss/u, "surface: matte"),
  replace("more silica", "recipes/glazes/liner.md", /silica, parts: 30/u, "silica, parts: 34"),
  replace("an old code", "tiles/evening/EV-2.md", /^maker: m02/mu, "maker: m02\nformerly: OLD-2"),
  replace("another jar", "tiles/evening/set.md", /7: soot/u, "7: liner"),
  replace("a name is shown", "studio.yaml", /shown: no/u, "shown: yes"),
  replace(
    "a name is hidden",
    "studio.yaml",
    /Wren Ashdown, shown: yes/u,
    "Wren Ashdown, shown: no",
  ),
  replace("another address", "studio.yaml", /eelgate\.example\/tests/u, "eelgate.example/more"),
  replace("no address", "studio.yaml", /^address: .*$/mu, ""),
);

/** The same set is published, hidden again, or hidden under another address. */
const hiding = fc.constantFrom(
  replace(
    "the hidden set is shown",
    "tiles/hidden/set.md",
    /listed: no\nlink: \w+/u,
    "kind: class",
  ),
  replace(
    "it is hidden",
    "tiles/hidden/set.md",
    /kind: class/u,
    "listed: no\nlink: k7wq2mzt4hx3vb5nrd6yfp2cja",
  ),
  replace(
    "it moves",
    "tiles/hidden/set.md",
    /k7wq2mzt4hx3vb5nrd6yfp2cja/u,
    "b3wq2mzt4hx3vb5nrd6yfp2cjb",
  ),
  replace(
    "the open set is hidden",
    "tiles/evening/set.md",
    /kind: class/u,
    "kind: class\nlisted: no\nlink: c9wq2mzt4hx3vb5nrd6yfp2cjc",
  ),
);

const removed = fc.constantFrom(...records.slice(1)).map((file) =>
  edit(`${file} goes`, file, (path) => {
    rmSync(path);
    rmSync(path.replace(/md$/u, "jpg"), { force: true });
  }),
);

const renamed = fc.tuple(anyTile, fc.integer({ min: 10, max: 13 })).map(([file, number]) =>
  edit(`${file} becomes number ${number}`, file, (path) => {
    const to = path.replace(/\d+\.md$/u, `${number}.md`);
    renameSync(path, to);
    const [picture, beside] = [path, to].map((each) => each.replace(/md$/u, "jpg"));
    if (picture && beside && existsSync(picture)) renameSync(picture, beside);
  }),
);

const added = fc.tuple(fc.constantFrom("tiles/evening/", "tiles/hidden/", "tiles/"), fc.nat(9)).map(
  ([folder, number]): Edit => ({
    what: `a tile NEW-${number} in ${folder}`,
    make: (archive) =>
      writeFileSync(
        join(archive, folder, `NEW-${number}.md`),
        "---\nclay: buff\nlayers: [{glaze: soot, coats: 1}, {glaze: grå}, {fired: g-1}]\nfate: cracked\nresult: {surface: satin}\n---\n",
      ),
  }),
);

const moved = anyTile.map((file) =>
  edit(`${file} goes to the hidden set`, file, (path, archive) =>
    renameSync(path, join(archive, "tiles/hidden", path.slice(dirname(path).length))),
  ),
);

const siteFiles = [
  ...["index.html", "tiles/ev-1.html", "tiles/ev-2.html", "glazes/soot.html", "data/tiles.json"],
  ...["data/facets.js", "pagefind/pagefind.js", "pagefind/pagefind-entry.json", "assets/site.css"],
  "s/k7wq2mzt4hx3vb5nrd6yfp2cja/index.html",
];

/** What somebody does to the site itself. */
const byHand = fc
  .tuple(fc.constantFrom(...siteFiles), fc.constantFrom("more", "other", "gone"))
  .map(([name, how]) =>
    edit(`${name} of the site: ${how}`, join("site", name), (path) => {
      if (how === "gone") rmSync(path);
      else if (how === "more") appendFileSync(path, "more");
      // As long as before, and whoever wrote it may have been very quick.
      else writeFileSync(path, readFileSync(path, "utf8").replace(/[a-m]/u, "z"));
    }),
  );

/** Any edit; every kind is as likely as the others. */
export const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  ...[notes, names, fields, hiding, removed, renamed, added, moved, byHand],
);
