/** Small whole archives in a folder of their own, for tests of commands. */
import { mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import sharp from "sharp";

export type Files = Readonly<Record<string, string | Uint8Array>>;

/** A photograph of one colour, as a phone might give it. */
export function photograph(colour: string, width = 1200, height = 900): Promise<Buffer> {
  return sharp({ create: { width, height, channels: 3, background: colour } })
    .jpeg()
    .toBuffer();
}

/** Writes files into a new folder. */
export async function writeFolder(files: Files): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "tilebook-archive-"));
  await writeInto(folder, files);
  return folder;
}

export async function writeInto(folder: string, files: Files): Promise<void> {
  for (const [path, content] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), content);
  }
}

/** A sound archive that has one of everything: two sets, one of them unlisted. */
export async function soundFiles(): Promise<Files> {
  return {
    "studio.yaml": [
      "format: 1",
      "studio: Eelgate Pottery",
      "address: https://eelgate.example/tests/",
      "makers:",
      "  m01: {name: Wren Ashdown, shown: yes}",
      "  m02: {name: Bram Tolliver, shown: initials}",
      "  m03: {name: Hesper Lund, shown: no}",
    ].join("\n"),
    "recipes/clays/buff.md": "---\nname: Buff stoneware\ncones: 5-9\n---\n",
    "recipes/glazes/soot.md":
      "---\nname: Soot\nkind: glaze\nbought: {maker: Oxbow}\ncones: 5-6\ntone: dark\n---\n",
    "recipes/glazes/liner.md": [
      "---",
      "name: Liner",
      "kind: glaze",
      "cones: 5-6",
      "cover: opaque",
      "tone: light",
      "ingredients:",
      "  - {material: potash-feldspar, parts: 40}",
      "  - {material: silica, parts: 30}",
      "  - {material: whiting, parts: 20}",
      "  - {material: kaolin, parts: 10}",
      "---",
      "Made every term.",
    ].join("\n"),
    "tiles/firings/g-1.md": [
      "---",
      "on: 2026-10-20",
      "kind: glaze",
      "kiln: Big electric",
      "heated-by: electric",
      "atmosphere: oxidation",
      "cone: 6",
      "witness: {top: 6, bottom: 5}",
      "tiles: {top: [EV-1, HID-1], bottom: [EV-2]}",
      "---",
    ].join("\n"),
    "tiles/evening/set.md":
      "---\nname: Evening class\nkind: class\ndefaults: {clay: buff}\njars: {7: soot}\n---\n",
    "tiles/evening/EV-1.md": [
      "---",
      "glazed: 2026-10-14",
      "maker: m01",
      "layers:",
      "  - fired: bisque",
      "  - {glaze: 7, coats: 2, by: brush}",
      "  - {glaze: liner, coats: 1, by: dip}",
      "result: {surface: satin, effects: breaking, faults: none, again: yes}",
      "formerly: [OLD-1]",
      "---",
      "White over dark: {{ it }} shows <script>alert(1)</script>.",
    ].join("\n"),
    "tiles/evening/EV-1.jpg": await photograph("#6b7f86"),
    "tiles/evening/EV-2.md": [
      "---",
      "maker: m02",
      "layers:",
      "  - {glaze: soot, coats: 2, by: pour, where: [top, rim]}",
      "result: {surface: gloss, faults: [running], again: no}",
      "---",
    ].join("\n"),
    "tiles/evening/EV-2.jpg": await photograph("#4b4644"),
    "tiles/evening/EV-3.md": "---\nmaker: m03\nlayers: [{glaze: soot}]\n---\n",
    "tiles/hidden/set.md":
      "---\nname: Quiet class\nlisted: no\nlink: k7wq2mzt4hx3vb5nrd6yfp2cja\ndefaults: {clay: buff}\n---\n",
    "tiles/hidden/HID-1.md": [
      "---",
      "layers: [{glaze: soot, coats: 1}, {glaze: liner, coats: 3}]",
      "result: {surface: dry, again: no}",
      "---",
      "Nobody but us.",
    ].join("\n"),
    "tiles/hidden/HID-1.jpg": await photograph("#aa9977"),
  };
}
