/** The changelog keeps to the form that it names: Keep a Changelog 1.1.0, whose six kinds of change these are. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { project } from "../house/files.ts";

const text = readFileSync(join(project, "CHANGELOG.md"), "utf8");

const kinds = ["Added", "Changed", "Deprecated", "Removed", "Fixed", "Security"];

test("CHANGELOG.md begins with what is not released yet, then versions with their days, the newest first", () => {
  const [first, ...versions] = [...text.matchAll(/^## (.+)$/gmu)].map(([, title = ""]) => title);
  expect(first).toBe("[Unreleased]");
  const days = versions.map(
    (title) => /^\[\d+\.\d+\.\d+\] - (\d{4}-\d{2}-\d{2})$/u.exec(title)?.[1],
  );
  expect(days).not.toContain(undefined);
  expect(days).toEqual(days.toSorted().toReversed());
});

test("CHANGELOG.md sorts changes by the six kinds, each with something in it and once a version", () => {
  for (const version of text.split(/^## /mu).slice(1)) {
    const [, ...parts] = version.split(/^### /mu);
    const told = parts.map((part) => part.split("\n")[0] ?? "");
    expect(told.length).toBeGreaterThan(0);
    expect(told).toEqual(kinds.filter((kind) => told.includes(kind)));
    for (const part of parts) expect(part).toMatch(/^- \S/mu);
  }
});
