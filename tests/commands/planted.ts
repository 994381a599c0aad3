/** An archive with words in it that nobody may find on its site, and notes that try to do harm. */
import { type Files, soundFiles } from "../support/archive-folder.ts";

/** Keys of makers that occur nowhere else by chance. */
export const plantedKeys = ["qx7-wren", "qx8-bram", "qx9-hesper"] as const;

const harm = [
  "White over dark: {{ it }} and {% raw %} show <script>alert(1)</script>.",
  "",
  "[run](javascript:alert(1)) [host](//evil.example/x) [data](data:text/html,x)",
  "",
  "![out](../../studio.yaml) ![up](../../../photo.png) ![web](https://evil.example/p.png)",
  "",
  "<img src=x onerror=alert(1)> <iframe src='//evil.example'></iframe>",
  "",
  "[a good link](https://clay.example/notes)",
].join("\n");

/** The sound archive with planted keys, hostile notes and names of every alphabet. */
export async function plantedFiles(): Promise<Files> {
  const renamed = Object.entries(await soundFiles()).map(([file, content]) => [
    file,
    typeof content === "string" ? withKeys(content) : content,
  ]);
  const sound = Object.fromEntries(renamed) as Record<string, string | Uint8Array>;
  return {
    ...sound,
    "tiles/evening/EV-1.md": `${String(sound["tiles/evening/EV-1.md"])}\n\n${harm}\n`,
    "tiles/evening/EV-2.md": `${String(sound["tiles/evening/EV-2.md"])}\n${harm}\n`,
    "recipes/glazes/soot.md": `${String(sound["recipes/glazes/soot.md"])}${harm}\n`,
    "tiles/Blå-7.md": [
      "---",
      "clay: buff",
      "texture: '<b>own</b> {{ words }}'",
      "layers: [{glaze: grå}]",
      "---",
    ].join("\n"),
    "recipes/glazes/grå.md": "---\nname: Grå & <Grön>\nkind: glaze\nbought: {maker: Oxbow}\n---\n",
  };
}

function withKeys(text: string): string {
  return plantedKeys
    .reduce((all, key, i) => all.replaceAll(`m0${i + 1}`, key), text)
    .replace("Hesper Lund", "Hesper Quillane")
    .replace("Bram Tolliver", "Bramwell Tolliver");
}
