import { readFileSync } from "node:fs";
import { isBuiltin } from "node:module";
import { join, posix } from "node:path";
import { parseSync, Visitor } from "oxc-parser";
import { project } from "./files.ts";

/** What one file names in an import, an export from elsewhere, or the type of an import. */
export type Import = {
  readonly from: string;
  readonly to:
    | { readonly file: string }
    | { readonly package: string }
    | { readonly builtin: string }
    | { readonly computed: true };
  /** Whether nothing of it is left when the types are gone. */
  readonly typeOnly: boolean;
  /** Whether it is loaded only when the program comes to it. */
  readonly lazy: boolean;
};

/** The imports of a source file, named by its path from the project's root. */
export function readImports(path: string): readonly Import[] {
  return parseImports(path, readFileSync(join(project, path), "utf8"));
}

/** The imports of a source text. */
export function parseImports(path: string, text: string): readonly Import[] {
  const { program, errors } = parseSync(path, text);
  if (errors[0]) throw new Error(`${path} cannot be parsed: ${errors[0].message}`);
  const found: Import[] = [];
  const add = (specifier: string | undefined, typeOnly: boolean, lazy = false) =>
    found.push({ from: path, to: resolveSpecifier(path, specifier), typeOnly, lazy });
  new Visitor({
    ImportDeclaration({ source, importKind, specifiers }) {
      const named = specifiers.filter((each) => each.type === "ImportSpecifier");
      const onlyTypes =
        named.length > 0 &&
        named.length === specifiers.length &&
        named.every((each) => each.importKind === "type");
      add(source.value, importKind === "type" || onlyTypes);
    },
    ExportNamedDeclaration({ source, exportKind }) {
      if (source) add(source.value, exportKind === "type");
    },
    ExportAllDeclaration({ source, exportKind }) {
      add(source.value, exportKind === "type");
    },
    ImportExpression({ source }) {
      const written = source.type === "Literal" && typeof source.value === "string";
      add(written ? source.value : undefined, false, true);
    },
    TSImportType({ source }) {
      add(source.value, true);
    },
  }).visit(program);
  return found;
}

function resolveSpecifier(from: string, specifier: string | undefined): Import["to"] {
  if (specifier === undefined) return { computed: true };
  if (specifier.startsWith(".")) return { file: posix.join(posix.dirname(from), specifier) };
  if (isBuiltin(specifier)) return { builtin: specifier };
  const [scope = "", name = ""] = specifier.split("/");
  return { package: scope.startsWith("@") ? `${scope}/${name}` : scope };
}
