/** What an editor is told, in the forms of its protocol. */
import {
  type CompletionItem,
  CompletionItemKind,
  type Diagnostic,
  DiagnosticSeverity,
  InsertTextFormat,
} from "vscode-languageserver";
import type { Position, Range, TextDocument } from "vscode-languageserver-textdocument";
import type { Explained } from "../editing/explain.ts";
import type { Offer } from "../editing/offers.ts";
import type { LocatedProblem } from "../reader/locate.ts";

/** A problem as `check` tells it: what is wrong, and beneath it how to put it right. */
export function diagnosticOf(problem: LocatedProblem): Diagnostic {
  const { line, column, lineText, severity, code, message, hint } = problem;
  const end = Math.max(column, lineText.trimEnd().length);
  return {
    severity: severity === "error" ? DiagnosticSeverity.Error : DiagnosticSeverity.Warning,
    code,
    source: "tilebook",
    message: `${message}.\n${hint}`,
    range: {
      start: { line: line - 1, character: column - 1 },
      end: { line: line - 1, character: end },
    },
  };
}

const kinds: Readonly<Record<Offer["kind"], CompletionItemKind>> = {
  field: CompletionItemKind.Field,
  choice: CompletionItemKind.EnumMember,
  name: CompletionItemKind.Reference,
};

/**
 * An offer, which takes the place of the word that the cursor stands in.
 *
 * @param typed how many letters of it stand before the cursor
 * @param placesCursor whether the editor can be told where writing goes on
 */
export function itemsOf(
  offers: readonly Offer[],
  document: TextDocument,
  position: Position,
  typed: number,
  placesCursor: boolean,
): CompletionItem[] {
  const line = document.getText({
    start: position,
    end: { line: position.line, character: position.character + longestWord },
  });
  const [rest = ""] = /^[\p{L}\p{M}\p{N}._-]*/u.exec(line) ?? [];
  const isNamed = /^\s*:/u.test(line.slice(rest.length));
  const range = {
    start: { line: position.line, character: position.character - typed },
    end: { line: position.line, character: position.character + rest.length },
  };
  return offers.map((offer, at) => ({
    label: offer.label,
    kind: kinds[offer.kind],
    detail: offer.detail,
    documentation: offer.sentence,
    filterText: [offer.label, ...offer.also].join(" "),
    // The order of the schema, and of the archive's ids, which is that of a reader.
    sortText: String(at).padStart(5, "0"),
    ...(isNamed && offer.kind === "field"
      ? { textEdit: { range, newText: offer.label } }
      : editOf(offer, range, placesCursor)),
  }));
}

function editOf({ text, closing }: Offer, range: Range, placesCursor: boolean) {
  if (closing === "" || !placesCursor) return { textEdit: { range, newText: text + closing } };
  const escaped = [text, closing].map((part) => part.replace(/[\\$}]/gu, "\\$&"));
  return {
    insertTextFormat: InsertTextFormat.Snippet,
    textEdit: { range, newText: escaped.join("$0") },
  };
}

/** No id is longer. */
const longestWord = 100;

/** The field's sentence, its choices, and what an id names, each on a line of its own. */
export function explanationOf({ field, sentence, choices, ownWords, named }: Explained): string {
  const last = ownWords ? ", or own words" : "";
  return [
    ...(named ? [tellNamed(named)] : []),
    `${field}: ${sentence}`,
    ...(choices.length > 0 ? [`One of: ${choices.join(", ")}${last}.`] : []),
  ].join("\n\n");
}

function tellNamed({ word, name, detail, file }: NonNullable<Explained["named"]>): string {
  const of = [name, detail].filter((it) => it !== "").join(", ");
  return `${word}${of === "" ? "" : `: ${of}`}${file === undefined ? "" : ` (${file})`}`;
}
