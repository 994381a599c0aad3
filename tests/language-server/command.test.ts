/** `tilebook language-server` as an editor starts it: a program, frames on its standard input and output. */
import { spawn } from "node:child_process";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import { archiveWith } from "../commands/archives.ts";
import { ended, program } from "../commands/tilebook.ts";

function frame(message: object): string {
  const text = JSON.stringify({ jsonrpc: "2.0", ...message });
  return `Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`;
}

test("the program answers, says nothing else on standard output, and ends when it is told to", async () => {
  const archive = await archiveWith({});
  const uri = pathToFileURL(`${archive}/tiles/evening/EV-3.md`).href;
  const child = spawn(process.execPath, [program, "language-server", "--stdio"]);
  const textDocument = { uri, languageId: "markdown", version: 1, text: "---\nclay: \n---\n" };
  for (const message of [
    { id: 1, method: "initialize", params: { processId: null, rootUri: null, capabilities: {} } },
    { method: "initialized", params: {} },
    { method: "textDocument/didOpen", params: { textDocument } },
    {
      ...{ id: 2, method: "textDocument/completion" },
      params: { textDocument: { uri }, position: { line: 1, character: 6 } },
    },
  ])
    child.stdin.write(frame(message));
  child.stdout.on("data", (part) => {
    if (!String(part).includes('"id":2')) return;
    child.stdin.write(frame({ id: 3, method: "shutdown" }));
    child.stdin.write(frame({ method: "exit" }));
  });
  const { code, out, err } = await ended(child);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  const frames = out.split(/Content-Length: \d+\r\n\r\n/u);
  expect(frames[0]).toBe("");
  const answers = frames.slice(1).map((text) => JSON.parse(text));
  expect(answers.find(({ id }) => id === 2).result).toMatchObject([{ label: "buff" }]);
});
