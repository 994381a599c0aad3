/** Answers an editor: completion, explanations, problems and where an id is written. Runs nothing of an archive. */
import {
  type Connection,
  MarkupKind,
  type ServerCapabilities,
  TextDocumentSyncKind,
  TextDocuments,
} from "vscode-languageserver";
import { type Position, TextDocument } from "vscode-languageserver-textdocument";
import { explain } from "../editing/explain.ts";
import { offersAt } from "../editing/offers.ts";
import { findCursor, findWordAt } from "../reader/yaml-cursor.ts";
import { type Examination, type Examine, keepExaminations } from "./examinations.ts";
import { type FilePlace, placeOfUri, uriOf } from "./places.ts";
import { knows, type RecordAt, recordAt } from "./record-at.ts";
import { diagnosticOf, explanationOf, itemsOf } from "./told.ts";

/** Serves until the editor ends it. */
export function serveEditor(connection: Connection, examine: Examine): void {
  const documents = new TextDocuments(TextDocument);
  let placesCursor = false;
  const openIn = (dir: string) =>
    documents.all().flatMap((document) => {
      const place = placeOfUri(document.uri);
      return place?.dir === dir ? [{ document, file: place.file }] : [];
    });
  const examinations = keepExaminations({
    examine,
    unsaved: (dir) => new Map(openIn(dir).map(({ document, file }) => [file, document.getText()])),
    examined: (dir, examination, unsaved) => {
      // A text that was changed meanwhile gets its problems with its next examination.
      const same = openIn(dir).filter((it) => unsaved.get(it.file) === it.document.getText());
      tellProblems(connection, same, examination);
    },
    failed: (cause) => connection.console.error(`The archive could not be examined: ${cause}`),
  });
  const again = (uri: string) => {
    const place = placeOfUri(uri);
    if (place) examinations.again(place.dir);
  };
  documents.onDidChangeContent(({ document }) => again(document.uri));
  documents.onDidSave(({ document }) => again(document.uri));
  documents.onDidClose(({ document }) => {
    void connection.sendDiagnostics({ uri: document.uri, diagnostics: [] });
    again(document.uri);
  });
  connection.onDidChangeWatchedFiles(({ changes }) => {
    for (const { uri } of changes) again(uri);
  });
  connection.onInitialize(({ capabilities: { textDocument } }) => {
    placesCursor = textDocument?.completion?.completionItem?.snippetSupport === true;
    return { capabilities, serverInfo: { name: "tilebook" } };
  });
  connection.onShutdown(() => examinations.end());
  const find = async (uri: string, position: Position) => {
    const [document, place] = [documents.get(uri), placeOfUri(uri)];
    const known = place && (await examinations.last(place.dir, (read) => knows(read, place.file)));
    const record = document && known && recordAt(document, position, place, known.read);
    return record && { record, document, place };
  };
  answerQuestions(connection, find, () => placesCursor);
  documents.listen(connection);
  connection.listen();
}

const capabilities: ServerCapabilities = {
  textDocumentSync: {
    openClose: true,
    change: TextDocumentSyncKind.Incremental,
    save: { includeText: false },
  },
  completionProvider: { triggerCharacters: [":", " ", "-", "{", "[", ","] },
  hoverProvider: true,
  definitionProvider: true,
};

interface Asked {
  readonly record: RecordAt;
  readonly document: TextDocument;
  readonly place: FilePlace;
}

/**
 * @param find what is asked about; undefined where that is no YAML of a record
 * @param placesCursor whether the editor can be told where writing goes on
 */
function answerQuestions(
  connection: Connection,
  find: (uri: string, position: Position) => Promise<Asked | undefined>,
  placesCursor: () => boolean,
): void {
  connection.onCompletion(async ({ textDocument, position }) => {
    const asked = await find(textDocument.uri, position);
    const cursor = asked && findCursor(asked.record.yaml, asked.record.offset);
    if (!cursor) return [];
    const offers = offersAt(asked.record.shape, cursor, asked.record.known);
    return itemsOf(offers, asked.document, position, cursor.typed.length, placesCursor());
  });
  connection.onHover(async ({ textDocument, position }) => {
    const asked = await find(textDocument.uri, position);
    const found = asked && explainAt(asked);
    if (!asked || !found) return null;
    const { from } = asked.record;
    const [start, end] = [found.word.from, found.word.to].map((at) =>
      asked.document.positionAt(from + at),
    );
    return {
      // No words of the archive are read as Markdown.
      contents: { kind: MarkupKind.PlainText, value: explanationOf(found.explained) },
      ...(start && end && { range: { start, end } }),
    };
  });
  connection.onDefinition(async ({ textDocument, position }) => {
    const asked = await find(textDocument.uri, position);
    const file = asked && explainAt(asked)?.explained.named?.file;
    if (!asked || file === undefined) return null;
    const start = { line: 0, character: 0 };
    return { uri: uriOf({ dir: asked.place.dir, file }), range: { start, end: start } };
  });
}

function explainAt({ record }: Asked) {
  const word = findWordAt(record.yaml, record.offset);
  const explained = word && explain(record.shape, word, record.known);
  return explained && { word, explained };
}

/** Exactly what `check` says of each file that is shown. */
function tellProblems(
  connection: Connection,
  open: readonly { readonly document: TextDocument; readonly file: string }[],
  { read, problems }: Examination,
): void {
  const located = problems.map(read.locate);
  for (const { document, file } of open) {
    const own = located.filter((problem) => problem.file === file);
    void connection.sendDiagnostics({ uri: document.uri, diagnostics: own.map(diagnosticOf) });
  }
}
