/**
 * What is set side by side: in the address of its page, and on all others kept for as long as the
 * browser's tab, and no longer.
 */
import { idKey } from "../../terms/ids.ts";

export const kinds = ["tiles", "glazes"] as const;
export type Kind = (typeof kinds)[number];

/** No more are set beside each other: a fifth would leave none of them room. */
export const most = 4;

/** Ids of each kind, in the order in which they were chosen. */
export type Chosen = Readonly<Record<Kind, readonly string[]>>;

export const nothingChosen: Chosen = { tiles: [], glazes: [] };

/** Adds one, or takes it away where it is there already; a fifth is not added. */
export function toggle(chosen: Chosen, kind: Kind, id: string): Chosen {
  const ids = chosen[kind];
  const without = ids.filter((each) => idKey(each) !== idKey(id));
  if (without.length < ids.length) return { ...chosen, [kind]: without };
  return ids.length < most ? { ...chosen, [kind]: [...ids, id] } : chosen;
}

export function isChosen(chosen: Chosen, kind: Kind, id: string): boolean {
  return chosen[kind].some((each) => idKey(each) === idKey(id));
}

/** The part of an address after `?` for one kind. */
export function formatChoice(kind: Kind, ids: readonly string[]): string {
  return `?${kind}=${ids.map(encodeURIComponent).join(",")}`;
}

/** What an address asks for: each once, and no more than there is room for; undefined for nothing. */
export function parseChoice(search: string): { kind: Kind; ids: readonly string[] } | undefined {
  const parameters = new URLSearchParams(search);
  const kind = kinds.find((each) => parameters.has(each));
  if (!kind) return undefined;
  return { kind, ids: tidy((parameters.get(kind) ?? "").split(",")) };
}

function tidy(ids: readonly unknown[]): readonly string[] {
  const byKey = new Map<string, string>();
  for (const id of ids) {
    const text = typeof id === "string" ? id.trim() : "";
    if (text !== "" && !byKey.has(idKey(text))) byKey.set(idKey(text), text);
  }
  return [...byKey.values()].slice(0, most);
}

/** Each site has its own, where several are on one host. */
const keyOf = (root: string) => `tilebook-beside ${new URL(root || ".", location.href).href}`;

/** @param root the way from this page to the root of the site */
export function recall(root: string): Chosen {
  try {
    return readChosen(JSON.parse(sessionStorage.getItem(keyOf(root)) ?? "{}"));
  } catch {
    return nothingChosen;
  }
}

export function readChosen(kept: unknown): Chosen {
  const lists = (typeof kept === "object" && kept !== null ? kept : {}) as Partial<
    Record<Kind, unknown>
  >;
  const list = (kind: Kind) => (Array.isArray(lists[kind]) ? tidy(lists[kind]) : []);
  return { tiles: list("tiles"), glazes: list("glazes") };
}

export function remember(root: string, chosen: Chosen): void {
  try {
    sessionStorage.setItem(keyOf(root), JSON.stringify(chosen));
  } catch {
    // A browser that keeps nothing still has what stands in the address.
  }
}
