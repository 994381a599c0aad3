import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseText } from "../../src/archive/parse-text.ts";
import { parseYaml } from "../../src/reader/parse-yaml.ts";
import { readWith, record, sound, tell, tellOf } from "../archive/archives.ts";
import { processorTimeOf } from "../support/processor-time.ts";

/** What is told of a tile with these fields. */
const tellOfFields = (yaml: string) => tellOf({ "tiles/WL-002.md": record(yaml) });

describe("YAML as its author wrote it", () => {
  it("keeps every scalar as text", () => {
    const yaml = "a: 06\nb: 0412\nc: no\nd: 1:30\ne: 2026-10-14\nf: 1e3\ng: '06'\nh: .inf\ni: true";
    expect(parseYaml(yaml).source).toEqual({
      a: "06",
      b: "0412",
      c: "no",
      d: "1:30",
      e: "2026-10-14",
      f: "1e3",
      g: "06",
      h: ".inf",
      i: "true",
    });
  });

  it("leaves out what was left empty, and keeps what is meant to be empty", () => {
    const yaml =
      'a:\nb: ~\nc: null\nd: ""\ne: " "\nf: []\ng: {}\nh: [1, , 2]\ni: Null\nj: {k: , l: }\nm: [""]';
    expect(parseYaml(yaml.replace("1, , 2", "1, ~, 2")).source).toEqual({
      f: [],
      g: {},
      h: ["1", "2"],
      i: "Null",
    });
  });

  it("reads the same fields from every way to write them", () => {
    const flow = parseYaml("layers: [{glaze: soot, coats: 2}]\nnote: 'a\n\n  b'").source;
    const block = parseYaml('layers:\n- glaze: "soot"\n  coats:\n    2\nnote: |-\n  a\n  b').source;
    expect(flow).toEqual(block);
  });

  it("keeps a field whatever it is called", () => {
    const { source } = parseYaml(
      "__proto__: {polluted: yes}\nconstructor: x\ntoString: y\n<<: {z: 1}",
    );
    expect(Object.entries(source ?? {})).toEqual([
      ["__proto__", { polluted: "yes" }],
      ["constructor", "x"],
      ["toString", "y"],
      ["<<", { z: "1" }],
    ]);
    expect((source as { polluted?: string }).polluted).toBeUndefined();
  });

  it("repeats a value by * where it was marked with &", () => {
    expect(parseYaml("a: &x {glaze: soot}\nb: *x").source).toEqual({
      a: { glaze: "soot" },
      b: { glaze: "soot" },
    });
  });

  it("gives text in quotes back as it was, whatever the text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", minLength: 1 }), (text) => {
        const { source } = parseYaml(`a: ${JSON.stringify(text)}`);
        expect(source).toEqual(text.trim() === "" ? {} : { a: text });
      }),
    );
  });

  it("never fails, whatever stands in a file", () => {
    const yamlish = fc.array(
      fc.constantFrom(
        "a",
        "b: ",
        "- ",
        "\n",
        "  ",
        "[",
        "]",
        "{",
        "}",
        '"',
        "'",
        "&x ",
        "*x",
        "|\n",
        ">",
        "#",
        "!t ",
        ",",
        "? ",
        ": ",
        "---",
        "...",
        "%",
        "\t",
      ),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(yamlish, (pieces) => {
        for (const text of [pieces.join(""), record(pieces.join(""))])
          for (const fault of parseText(text, "markdown").faults) {
            expect(fault.line).toBeLessThanOrEqual(text.split("\n").length);
            expect(fault.column).toBeGreaterThanOrEqual(1);
          }
      }),
      { numRuns: 1000 },
    );
  });
});

describe("notes and words of contributors", () => {
  it("are data: no template in them is run, in fields as in notes", async () => {
    const { tiles } = sound(
      await readWith({
        "tiles/WL-002.md": record(
          'layers:\n  - {glaze: soot, detail: "{{ 6 * 7 }}"}\nresult:\n  next-time: use {{ glaze }} and {% raw %}',
          "{{ constructor.constructor('return process')().exit() }}",
        ),
      }),
    );
    const tile = tiles.get("wl-002");
    expect(tile?.steps[0]).toMatchObject({ detail: "{{ 6 * 7 }}" });
    expect(tile?.record.result?.[0]?.nextTime).toBe("use {{ glaze }} and {% raw %}");
    expect(tile?.notes).toBe("{{ constructor.constructor('return process')().exit() }}");
  });

  it("keep their rules, and only blank lines around them go", async () => {
    const notes = "\n\n    indented\n\n---\n\nafter a rule\n\n";
    const { tiles } = sound(
      await readWith({ "tiles/WL-002.md": record("layers: [{glaze: soot}]", notes) }),
    );
    expect(tiles.get("wl-002")?.notes).toBe("    indented\n\n---\n\nafter a rule");
  });
});

describe("front matter that is not YAML", () => {
  const ran = () => (globalThis as { frontMatterRan?: boolean }).frontMatterRan;
  const program = "(globalThis.frontMatterRan = true, {layers: [{glaze: 'soot'}]})";

  it.each(["js", "javascript", "JS", "json", "coffee", "cson", "toml", "constructor", "__proto__"])(
    "is never run: ---%s",
    async (language) => {
      const text = `---${language}\n${program}\n---\n`;
      const found = await readWith({ "tiles/WL-002.md": text });
      expect(found.problems.map(({ code }) => code)).toEqual(["front-matter-language"]);
      expect(ran()).toBeUndefined();
    },
  );

  it("is refused in words", async () => {
    expect(await tellOf({ "tiles/WL-002.md": `---js\n${program}\n---\n` })).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:1:1 error: The fields are announced as “js”, and only YAML is read [front-matter-language]
        1 | ---js
          | ^
        Leave nothing but “---” on the first line, and write the fields as “name: value”.
      "
    `);
    expect(ran()).toBeUndefined();
  });

  it("is refused the second time as well as the first", () => {
    const text = `---js\n${program}\n---\n`;
    const first = parseText(text, "markdown");
    expect(parseText(text, "markdown")).toEqual(first);
    expect(first.source).toBeNull();
  });
});

describe("the lines around the fields", () => {
  it("that are missing or go on are reported", async () => {
    expect(
      await tellOf({
        "tiles/a.md": "",
        "tiles/b.md": "glazed: 2026-10-14\n",
        "tiles/c.md": "\n---\nlayers: []\n---\n",
        "tiles/d.md": "---\nlayers: []\n",
        "tiles/e.md": "---\nlayers: []\n--- notes\n---\n",
        "tiles/f.md": "----\nlayers: []\n----\n",
        "tiles/g.md": "---\n---\n",
        "tiles/h.md": "---\njust words\n---\n",
        "tiles/i.md": "---\n- a list\n---\n",
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/a.md:1:1 error: The file is empty [empty-file]
        Write the record into it, or take the file out of the archive.

      tiles/b.md:1:1 error: The file does not begin with a line “---”, so none of its fields can be found [no-front-matter]
        1 | glazed: 2026-10-14
          | ^
        Put a line “---” at the very top, the fields beneath it, and another “---” after them.

      tiles/c.md:1:1 error: The file does not begin with a line “---”, so none of its fields can be found [no-front-matter]
        Put a line “---” at the very top, the fields beneath it, and another “---” after them.

      tiles/d.md:1:1 error: The fields begin at the line “---”, and no second “---” says where they end [front-matter-not-closed]
        1 | ---
          | ^
        Put a line “---” between the last field and your notes.

      tiles/e.md:3:1 error: This line begins with “---” and goes on, so it is not clear where the fields end [front-matter-not-closed]
        3 | --- notes
          | ^
        Leave nothing but “---” on the line after the last field.

      tiles/f.md:1:1 error: The file does not begin with a line “---”, so none of its fields can be found [no-front-matter]
        1 | ----
          | ^
        Put a line “---” at the very top, the fields beneath it, and another “---” after them.

      tiles/g.md:1:1 error: “layers” is missing [missing-field]
        1 | ---
          | ^
        Add a line “layers:” and, beneath it, what was put on first: “  - glaze: soot”.

      tiles/h.md:2:1 error: Here should stand fields, and something else was found [no-fields]
        2 | just words
          | ^
        Write each field on a line of its own, as “name: value”.

      tiles/i.md:2:1 error: Here should stand fields, and something else was found [no-fields]
        2 | - a list
          | ^
        Write each field on a line of its own, as “name: value”.
      "
    `);
  });
});

describe("YAML that cannot be read", () => {
  const written: Record<string, string> = {
    "a tab": "layers:\n\t- glaze: soot",
    "an unclosed quote": 'maker: "m01\nlayers: []',
    "an unclosed single quote": "layers: []\nmaker: 'm01\nclay: buff",
    "an apostrophe in single quotes": "result:\n  next-time: 'Don't'",
    "words after a quote": 'clay: "buff" stoneware',
    "an unclosed bracket": "result:\n  faults: [crazing, crawling\nmaker: m01",
    "an unclosed brace": "layers:\n  - {glaze: soot, coats: 2\nmaker: m01",
    "a missing comma": "layers: [{glaze: soot coats: 2}]",
    "two commas": "result: {faults: [crazing,, crawling]}",
    "a second colon": "result:\n  next-time: one thing: fewer coats",
    "no space after a colon": "maker:m01\nlayers: []",
    "a line too far in": "maker: m01\n  clay: buff",
    "a line too far out": "result:\n  surface: satin\n again: yes",
    "a list entry too far out": "layers:\n  - glaze: soot\n - glaze: soot",
    "a list on the line of its name": "layers: - glaze: soot",
    "a value that begins with @": "clay: @home",
    "a value that begins with a backtick": "clay: `buff`",
    "a value that begins with %": "clay: %buff",
    "a value that begins with *": "layers: [{glaze: soot}]\nresult: {next-time: *more*}",
    "a value that begins with &": "layers: [{glaze: soot}]\nclay: &buff",
    "a value that begins with !": "clay: !buff stoneware",
    "a value that begins with a brace": "clay: {{ clay }}",
    "a backslash in double quotes": 'layers: [{glaze: soot}]\nclay: "C:\\buff"',
    "a backslash that YAML does not know": 'clay: "C:\\clay"',
    "text after a pipe": "clay: |buff\n  stoneware",
    "a list as a name": "? [a, b]\n: c",
    "two records in one": "layers: []\n...\nlayers: []",
    "a name twice": "clay: buff\nlayers: [{glaze: soot}]\nclay: white",
    "a name twice deeper": "layers:\n  - glaze: soot\n    coats: 1\n    glaze: soot",
  };

  it.each(Object.entries(written))("%s is shown where it is", async (_, yaml) => {
    expect(await tellOfFields(yaml)).toMatchSnapshot();
  });
});

describe("YAML meant to hurt", () => {
  it("a bomb of aliases is refused, and quickly", async () => {
    const lines = ["a0: &a0 [x, x, x, x, x, x, x, x, x]"];
    for (let i = 1; i <= 20; i += 1)
      lines.push(`a${i}: &a${i} [${Array.from({ length: 9 }, () => `*a${i - 1}`).join(", ")}]`);
    let told = "";
    const time = await processorTimeOf(async () => {
      told = await tellOfFields(lines.join("\n"));
    });
    expect(time).toBeLessThan(2000);
    expect(told.match(/too-many-aliases/gu)).toHaveLength(1);
  });

  it("an alias of itself is refused", async () => {
    expect(await tellOfFields("layers: &l [{glaze: soot}, *l]")).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:2:9 error: A value that begins with “&” means something special in YAML [bad-beginning]
        2 | layers: &l [{glaze: soot}, *l]
          |         ^
        Put the whole value in quotes, as in "&…".

      tiles/WL-002.md:2:28 error: A value that begins with “*” means something special in YAML [bad-beginning]
        2 | layers: &l [{glaze: soot}, *l]
          |                            ^
        Put the whole value in quotes, as in "*…".
      "
    `);
  });

  it("a hundred thousand brackets are refused, and quickly", async () => {
    for (const deep of ["[".repeat(100_000), "- ".repeat(100_000), "{a: ".repeat(60_000)]) {
      const time = await processorTimeOf(() => expect(parseYaml(`a: ${deep}`).source).toBeNull());
      expect(time).toBeLessThan(5000);
    }
  });

  it("more fields than any record has are not looked at", async () => {
    expect(await tellOfFields("layers: x\n".repeat(30_000))).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:1:1 error: The fields have more than the 100,000 letters that are read [yaml-too-long]
        1 | ---
          | ^
        Write long texts as notes, beneath the second line “---”.
      "
    `);
  });

  it("a directive changes nothing of how values are read", async () => {
    const found = await readWith({
      "studio.yaml": "%YAML 1.1\n---\nformat: 1\nstudio: 010\nmakers: {m01: {shown: no}}\n",
    });
    expect(sound(found).studio.studio).toBe("010");
  });
});

describe("what YAML reads as a comment", () => {
  it("is warned of where it looks like part of a value", async () => {
    const found = await readWith({
      "tiles/WL-002.md": record(
        "# A comment\n#and another\nlayers:\n  - glaze: soot #7\n  - glaze: soot # from the new jar\n  #- glaze: soot\n    #more\nclay: buff",
      ),
    });
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:5:17 warning: “#7” is read as a comment, not as part of the value [read-as-comment]
        5 |   - glaze: soot #7
          |                 ^
        Put the whole value in quotes, or write a space after “#” if a comment is meant.
      "
    `);
    expect(found.archive?.tiles.get("wl-002")?.steps).toHaveLength(2);
  });
});
