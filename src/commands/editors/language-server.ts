/** `tilebook language-server`: tells an editor what it asks, over standard input and output. */
import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import type { Examine } from "../../language-server/examinations.ts";
import { serveEditor } from "../../language-server/serve-editor.ts";
import { examineToCheck } from "../check/examine-to-check.ts";
import { cacheFolderOf } from "../folders.ts";
import { startProgress } from "../progress.ts";

/** Serves until the editor ends the program: the package leaves it with 0 then, and with 1 where it was not told to. */
export function languageServer(): Promise<number> {
  const connection = createConnection(ProposedFeatures.all, process.stdin, process.stdout);
  // Standard output belongs to the protocol.
  console.log = (...words: readonly unknown[]) => console.error(...words);
  serveEditor(connection, examineForEditor);
  return new Promise(() => undefined);
}

/** The same problems as `check` finds, with what is not saved yet. */
export const examineForEditor: Examine = (dir, unsaved) =>
  examineToCheck(dir, cacheFolderOf({ archive: dir }), startProgress(true), unsaved);
