/** Which Tilebook this is. */
import { readFileSync } from "node:fs";

/** The version, as the program's own package says. */
export function ownVersion(): string {
  const text = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  return (JSON.parse(text) as { version: string }).version;
}
