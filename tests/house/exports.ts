import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync, Visitor } from "oxc-parser";
import { listSources, project } from "./files.ts";

/** What a file hands out by name, and every name that it speaks of. */
interface Names {
  readonly file: string;
  readonly exported: readonly string[];
  /** How often it speaks of a name, its declaration and imports included. */
  readonly spoken: ReadonlyMap<string, number>;
}

function readNames(file: string): Names {
  const text = readFileSync(join(project, file), "utf8");
  const exported = [
    ...text.matchAll(/^export (?:async )?(?:function|const|class|interface|type) (\w+)/gmu),
  ].flatMap(([, name]) => name ?? []);
  const spoken = new Map<string, number>();
  const count = ({ name }: { readonly name: string }) => {
    spoken.set(name, (spoken.get(name) ?? 0) + 1);
  };
  new Visitor({ Identifier: count, JSXIdentifier: count }).visit(parseSync(file, text).program);
  return { file, exported, spoken };
}

/** Exports that the program itself never uses, as `file: name`. */
export function findUnused(): readonly string[] {
  const all = listSources().map(readNames);
  const speakers = new Map<string, number>();
  for (const { spoken } of all)
    for (const name of spoken.keys()) speakers.set(name, (speakers.get(name) ?? 0) + 1);
  return all.flatMap(({ file, exported, spoken }) =>
    exported
      .filter((name) => speakers.get(name) === 1 && spoken.get(name) === 1)
      .map((name) => `${file}: ${name}`),
  );
}
