/** Records that are not what they should be: each is told of in its place, and none does harm. */
import { existsSync } from "node:fs";
import { symlink } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { soundFiles } from "../support/archive-folder.ts";
import { archiveWith, errorsOf, folderWith } from "./archives.ts";

const tile = "tiles/evening/EV-4.md";

/** What `check` says of one record among sound ones, as `file:line code`. */
async function told(record: string | Uint8Array, file = tile): Promise<string[]> {
  const { code, errors } = await errorsOf(await archiveWith({ [file]: record }));
  expect(code).toBe(errors.length > 0 ? 1 : 0);
  return errors.map((error) => `${error.file}:${error.line} ${error.code}`);
}

describe("an archive without tiles", () => {
  test("that is an empty folder is told what it lacks", async () => {
    const { code, errors } = await errorsOf(await folderWith({}));
    expect(code).toBe(1);
    expect(errors).toMatchObject([{ code: "no-studio", file: "studio.yaml" }]);
  });

  test("that is a studio alone is told how to begin", async () => {
    const archive = await folderWith({ "studio.yaml": "format: 1\nstudio: Eelgate Pottery\n" });
    const { code, errors } = await errorsOf(archive);
    expect(code).toBe(1);
    expect(errors).toMatchObject([{ code: "empty-archive", hint: /tiles\/TB-001.md/u }]);
  });
});

describe("the text of a record", () => {
  test("that is not UTF-8 is told of at its line", async () => {
    const latin1 = Buffer.from(
      "---\nmaker: m01\nlayers: [{glaze: soot}]\n---\nTrès bleu\n",
      "latin1",
    );
    expect(await told(latin1)).toEqual([`${tile}:5 not-utf-8`]);
  });

  test("may begin with a byte-order mark and end its lines as Windows does", async () => {
    const lines = [
      "---",
      "maker: m01",
      "layers:",
      "  - {glaze: soot, coats: 2}",
      "---",
      "Blue.",
      "",
    ];
    expect(await told(`\uFEFF${lines.join("\r\n")}`)).toEqual([]);
  });

  test("with such line ends has its faults told at the lines an editor shows", async () => {
    const lines = ["---", "maker: m01", "layers:", "  - {glaze: sott}", "---", ""];
    expect(await told(`\uFEFF${lines.join("\r\n")}`)).toEqual([`${tile}:4 unknown-glaze`]);
  });

  test("that is 20 MB long is not read, and told of as what it is", async () => {
    const notes = "A day at the kiln. ".repeat(1_100_000);
    expect(await told(`---\nlayers: [{glaze: soot}]\n---\n${notes}`)).toEqual([
      `${tile}:1 file-too-large`,
    ]);
  });

  test("with aliases that would grow to billions of words is refused at once", async () => {
    const levels = ["a", "b", "c", "d", "e", "f", "g", "h", "i"];
    const bomb = levels.map((name, i) => {
      const before = levels[i - 1];
      return `${name}: &${name} [${Array(9)
        .fill(before ? `*${before}` : "lol")
        .join(", ")}]`;
    });
    const found = await told(`---\n${bomb.join("\n")}\nlayers: *i\n---\n`);
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((line) => line.startsWith(tile))).toBe(true);
  });
});

describe("front matter that is a program", () => {
  test.each(["js", "javascript", "coffee"])(
    "is an error as ---%s, and never runs",
    async (name) => {
      const archive = await archiveWith({});
      const planted = join(archive, "ran");
      const program = `require("fs").writeFileSync(${JSON.stringify(planted)}, "")`;
      for (const record of [tile, "recipes/glazes/ash.md", "tiles/firings/g-2.md"]) {
        const text = `---${name}\n{ layers: ${program} }\n---\n`;
        expect(await told(text, record)).toEqual([`${record}:1 front-matter-language`]);
      }
      expect(existsSync(planted)).toBe(false);
    },
  );

  test("is no tag of YAML either", async () => {
    const text = "---\nlayers: !!js/function 'function () {}'\n---\n";
    const found = await told(text);
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((line) => line.startsWith(`${tile}:2`))).toBe(true);
  });
});

describe.skipIf(process.platform === "win32")("a link out of the archive", () => {
  test("is not followed, whatever it is said to be", async () => {
    const outside = await folderWith({
      "secret.md": "---\nlayers: [{glaze: soot}]\n---\nA secret.\n",
      "secret.jpg": (await soundFiles())["tiles/evening/EV-1.jpg"] ?? "",
      "secrets/glaze.md": "---\nname: Secret\nkind: glaze\nbought: {maker: Oxbow}\n---\n",
    });
    const archive = await archiveWith({});
    await symlink(join(outside, "secret.md"), join(archive, "tiles/evening/EV-4.md"));
    await symlink(join(outside, "secret.jpg"), join(archive, "tiles/evening/EV-1.back.jpg"));
    await symlink(join(outside, "secrets"), join(archive, "tiles/others"));
    const { code, errors } = await errorsOf(archive);
    expect(code).toBe(1);
    expect(errors.map(({ file, code: rule }) => `${file} ${rule}`)).toEqual([
      "tiles/evening/EV-1.back.jpg link-outside",
      "tiles/evening/EV-4.md link-outside",
      "tiles/others link-outside",
    ]);
  });
});
