/** The language server, spoken with as an editor speaks: frames of the protocol, over streams. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  createConnection,
  createProtocolConnection,
  type Diagnostic,
  ProposedFeatures,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import { examineForEditor } from "../../src/commands/editors/language-server.ts";
import { serveEditor } from "../../src/language-server/serve-editor.ts";
import { tilebook } from "../commands/tilebook.ts";
import { soundFiles, writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";

let archive = "";
let outside = "";
let editor: ProtocolConnection;
/** What was told last of a file, and who waits to be told. */
const told = new Map<string, readonly Diagnostic[]>();
const waiting = new Map<string, (diagnostics: readonly Diagnostic[]) => void>();

beforeAll(async () => {
  archive = await writeFolder(await soundFiles());
  outside = await writeFolder({ "note.md": "---\nlayers: 1\n---\n" });
  const [there, back] = [new PassThrough(), new PassThrough()];
  serveEditor(
    createConnection(
      ProposedFeatures.all,
      new StreamMessageReader(there),
      new StreamMessageWriter(back),
    ),
    examineForEditor,
  );
  editor = createProtocolConnection(new StreamMessageReader(back), new StreamMessageWriter(there));
  editor.onNotification("textDocument/publishDiagnostics", ({ uri, diagnostics }) => {
    told.set(uri, diagnostics);
    waiting.get(uri)?.(diagnostics);
    waiting.delete(uri);
  });
  editor.listen();
  const completion = { completionItem: { snippetSupport: true } };
  const capabilities = { textDocument: { completion } };
  await editor.sendRequest("initialize", { processId: null, rootUri: null, capabilities });
  await editor.sendNotification("initialized", {});
});

afterAll(async () => {
  await editor.sendRequest("shutdown");
  editor.dispose();
  await Promise.all([archive, outside].map(removeFolder));
});

const uriOf = (file: string, folder = archive) => pathToFileURL(join(folder, file)).href;

/** The problems that are told of a file next. */
function problemsOf(uri: string): Promise<readonly Diagnostic[]> {
  return new Promise((resolve) => waiting.set(uri, resolve));
}

function open(uri: string, text: string) {
  const textDocument = { uri, languageId: "markdown", version: 1, text };
  return editor.sendNotification("textDocument/didOpen", { textDocument });
}

/** What is told of it as it closes has come once something asked after that is answered. */
async function close(uri: string): Promise<void> {
  const textDocument = { uri };
  await editor.sendNotification("textDocument/didClose", { textDocument });
  await editor.sendRequest("textDocument/hover", {
    textDocument,
    position: { line: 0, character: 0 },
  });
}

/** Opens a text in which `|` stands, asks about that place, and closes it again. */
async function ask<T>(method: string, file: string, marked: string, folder = archive): Promise<T> {
  const uri = uriOf(file, folder);
  const at = marked.indexOf("|");
  const before = marked.slice(0, at).split("\n");
  await open(uri, marked.slice(0, at) + marked.slice(at + 1));
  const position = { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
  const answer = await editor.sendRequest<T>(method, { textDocument: { uri }, position });
  await close(uri);
  return answer;
}

interface Item {
  readonly label: string;
  readonly detail: string;
  readonly documentation: string;
  readonly textEdit: { readonly newText: string; readonly range: unknown };
}

const complete = (file: string, marked: string, folder?: string) =>
  ask<readonly Item[]>("textDocument/completion", file, marked, folder);

describe("completion", () => {
  test("jars of the set and glazes by what they are, in place of what was typed", async () => {
    const items = await complete("tiles/evening/EV-3.md", "---\nlayers: [{glaze: so|x}]\n---\n");
    expect(items.map(({ label, detail }) => [label, detail])).toEqual([
      ["7", "Soot, jar 7: soot"],
      ["liner", "Liner, glaze, cones 5–6"],
      ["soot", "Soot, glaze, cones 5–6"],
    ]);
    expect(items[2]?.textEdit).toEqual({
      newText: "soot",
      range: { start: { line: 1, character: 17 }, end: { line: 1, character: 20 } },
    });
  });

  test("fields with their sentences, in a file that is not on the disk yet", async () => {
    const items = await complete("recipes/clays/new.md", "---\nname: New\nrec|\n");
    expect(items.find(({ label }) => label === "reclaim")).toMatchObject({
      documentation: expect.stringContaining("reclaimed clay"),
      textEdit: { newText: "reclaim: " },
    });
  });

  test("a map that is begun on its line is closed, and writing goes on inside it", async () => {
    const [first] = await complete("tiles/evening/EV-3.md", "---\nlayers: |\n---\n");
    expect(first?.textEdit.newText).toBe("[{glaze: $0\\}]");
  });

  test("in studio.yaml too, and a name that has its colon gets no second one", async () => {
    const items = await complete("studio.yaml", "format: 1\nstu|: X\n");
    expect(items.find(({ label }) => label === "studio")?.textEdit.newText).toBe("studio");
  });

  test.each([
    ["in the notes", "tiles/evening/EV-3.md", "---\nlayers: [{glaze: soot}]\n---\ncl|"],
    ["on the fence", "tiles/evening/EV-3.md", "---\nlayers: [{glaze: soot}]\n|---\n"],
    ["in a file that is no record", "README.md", "---\n|"],
    ["before the front matter", "tiles/evening/EV-3.md", "|"],
  ])("nothing %s", async (_, file, text) => {
    expect(await complete(file, text)).toEqual([]);
  });

  test("nothing in a file that lies in no archive", async () => {
    expect(await complete("note.md", "---\n|\n---\n", outside)).toEqual([]);
  });
});

test("an id is explained, and leads to its file", async () => {
  const text = "---\nlayers: [{glaze: so|ot}]\n---\n";
  const file = "tiles/evening/EV-3.md";
  const hover = await ask<{ contents: { value: string } }>("textDocument/hover", file, text);
  expect(hover.contents.value).toBe(
    "soot: Soot, glaze, cones 5–6 (recipes/glazes/soot.md)\n\nglaze: An id of recipes/glazes, or the jar number that the set gives it.",
  );
  const place = await ask<{ uri: string }>("textDocument/definition", file, text);
  expect(place.uri).toBe(uriOf("recipes/glazes/soot.md"));
});

describe("problems", () => {
  test("are those of check, on text that is not saved, and go when they are mended", async () => {
    const file = "tiles/evening/EV-3.md";
    const uri = uriOf(file);
    const faulty = "---\nmaker: m9\nlayers: [{glaze: sooty, by: dipp}]\n---\n";
    const first = problemsOf(uri);
    await open(uri, faulty);
    const diagnostics = await first;
    const before = await readFile(join(archive, file), "utf8");
    await writeFile(join(archive, file), faulty);
    const { out } = await tilebook("check", "--archive", archive, "--format", "json");
    await writeFile(join(archive, file), before);
    const { problems } = JSON.parse(out) as {
      problems: {
        file: string;
        line: number;
        column: number;
        message: string;
        hint: string;
        code: string;
      }[];
    };
    const own = problems.filter((problem) => problem.file === file);
    expect(own.length).toBeGreaterThan(2);
    expect(diagnostics.map(({ range, message, code }) => [range.start, message, code])).toEqual(
      expect.arrayContaining(
        own.map(({ line, column, message, hint, code }) => [
          { line: line - 1, character: column - 1 },
          `${message}.\n${hint}`,
          code,
        ]),
      ),
    );
    expect(diagnostics.length).toBe(own.length);
    const then = problemsOf(uri);
    await editor.sendNotification("textDocument/didChange", {
      textDocument: { uri, version: 2 },
      contentChanges: [{ text: before }],
    });
    expect((await then).filter(({ severity }) => severity === 1)).toEqual([]);
    await close(uri);
    expect(told.get(uri)).toEqual([]);
  });

  test.each([
    ["broken YAML", "---\nlayers: [{glaze: soot\nmaker: {{{\n---\n"],
    ["tabs, CRLF and a byte order mark", "\ufeff---\r\n\tlayers:\r\n\t- glaze: soot\r\n---\r\n"],
    ["no fence at its end", "---\nlayers:\n"],
    ["nothing at all", ""],
    ["a megabyte of notes", `---\nlayers: [{glaze: soot}]\n---\n${"long words. ".repeat(83_000)}`],
  ])("are told of %s, and the next question is answered", async (_, text) => {
    const uri = uriOf("tiles/evening/EV-3.md");
    const next = problemsOf(uri);
    await open(uri, text);
    expect(await next).toBeInstanceOf(Array);
    await close(uri);
    const items = await complete("tiles/evening/EV-3.md", "---\nclay: |\n---\n");
    expect(items.map(({ label }) => label)).toEqual(["buff"]);
  });
});

test("what it does not know is answered as the protocol has it", async () => {
  await expect(editor.sendRequest("textDocument/rename", {})).rejects.toMatchObject({
    code: -32601,
  });
});
