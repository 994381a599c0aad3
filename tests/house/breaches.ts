import { arrows, doors, packages, roomsThatUseNode, startsTheCompiled } from "./arrows.ts";
import type { Import } from "./imports.ts";

/**
 * The room a file of src/ or templates/ stands in, templates/words/ and templates/drawing/ being rooms of their own; undefined
 * for what stands in neither.
 */
export function roomOf(path: string): string | undefined {
  const [top, next, ...deeper] = path.split("/");
  if (top === "templates") return next === "words" || next === "drawing" ? next : "templates";
  if (top !== "src") return undefined;
  return deeper.length > 0 ? next : "src";
}

/** What the imports do that the plan of the house forbids, one sentence each. */
export function findBreaches(imports: readonly Import[]): readonly string[] {
  return imports.flatMap((each) => breachesOf(each, roomOf(each.from) ?? "")).sort();
}

function breachesOf({ from, to, typeOnly }: Import, room: string): readonly string[] {
  if (!(room in arrows)) return [`${from} stands in a room that has no row: ${room}`];
  if ("computed" in to) {
    return from === startsTheCompiled
      ? []
      : [`${from} computes what it imports; name it in plain quotes`];
  }
  if ("builtin" in to) {
    return roomsThatUseNode.includes(room)
      ? []
      : [`${from} uses ${to.builtin}, but ${room} is pure`];
  }
  if ("package" in to) return packageBreaches(from, room, to.package);
  return fileBreaches(from, room, to.file, typeOnly);
}

function packageBreaches(from: string, room: string, name: string): readonly string[] {
  const open = packages[name];
  if (!open) return [`${from} imports ${name}, which has no row`];
  return open.includes(room) ? [] : [`${from} imports ${name}, which is for ${open.join(", ")}`];
}

function fileBreaches(
  from: string,
  room: string,
  to: string,
  typeOnly: boolean,
): readonly string[] {
  const door = doors[to];
  if (door !== undefined && door !== from) return [`${from} imports ${to}, which is for ${door}`];
  const target = roomOf(to);
  const open = arrows[room] ?? [];
  if (target === room || (open === "every room" && target !== undefined)) return [];
  if (open !== "every room" && target !== undefined) {
    if (open.includes(target) || (typeOnly && open.includes(`types of ${target}`))) return [];
  }
  const may = open === "every room" ? open : open.join(", ") || "no other room";
  return [`${from} imports ${to}, but ${room} may import from ${may}`];
}

/** The circles of files that import one another, types included, each as a path back to its start. */
export function findCircles(imports: readonly Import[]): readonly string[] {
  const targets = new Map<string, string[]>();
  for (const { from, to } of imports) {
    if ("file" in to) targets.set(from, [...(targets.get(from) ?? []), to.file]);
  }
  const done = new Set<string>();
  const circles: string[] = [];
  const walk = (file: string, path: readonly string[]): void => {
    const start = path.indexOf(file);
    if (start >= 0) circles.push([...path.slice(start), file].join(" -> "));
    if (start >= 0 || done.has(file)) return;
    for (const next of targets.get(file) ?? []) walk(next, [...path, file]);
    done.add(file);
  };
  for (const file of targets.keys()) walk(file, []);
  return circles;
}
