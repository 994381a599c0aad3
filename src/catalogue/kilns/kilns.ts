/** Kilns: what was fired in each, and how near it came to what was aimed at. */

import { conesBetween } from "../../firing/accounts.ts";
import type { HeatSource, KindOfFiring } from "../../terms/choices.ts";
import type { Cone } from "../../terms/cones.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import { bareSlug, kilnUrl, nameSlugs } from "../addresses.ts";
import type { Link } from "../link.ts";
import type { FiringView, HeatFrom } from "./heat.ts";
import { compareShelves } from "./shelves.ts";
import type { Agreement, FiringAccount } from "./story.ts";
import { firingLink } from "./tile-firings.ts";

/** One kiln and all that was fired in it. */
export interface CatalogueKiln extends Link {
  readonly heatedBy: readonly HeatSource[];
  /** Its firings in the order of their days; what is still to come stands last. */
  readonly firings: readonly KilnFiring[];
  /** Its shelves, top first, as far as witness cones were read on them and an aim is known. */
  readonly shelves: readonly KilnShelf[];
  /** The two shelves that differ most, over all firings in which both were read. */
  readonly tilt: KilnTilt | null;
}

/** A firing of a kiln against its aim. */
export interface KilnFiring {
  readonly firing: Link;
  readonly on: string | null;
  readonly kind: KindOfFiring;
  readonly aim: Cone | null;
  /** By shelf, top first: how many cones hotter than the aim; null where no aim is known. */
  readonly shelves: readonly {
    readonly shelf: string;
    readonly off: Off | null;
  }[];
  /** The same of the log or, without one, the programme. */
  readonly heat: { readonly from: HeatFrom; readonly off: Off } | null;
  readonly agreement: Agreement;
}

/** From so many cones hotter to so many; infinite where that end is open. */
export interface Off {
  readonly low: number;
  readonly high: number;
}

export interface KilnShelf {
  readonly shelf: string;
  /** How many firings its witness cones were read in. */
  readonly firings: number;
  /** How many cones hotter than the aim: in the middle of all, at the least and at the most. */
  readonly median: number;
  readonly coolest: number;
  readonly hottest: number;
}

export interface KilnTilt {
  readonly hotter: string;
  readonly cooler: string;
  /** In how many firings both were read, and in how many of them the one was hotter. */
  readonly firings: number;
  readonly times: number;
  /** By how many cones at the most. */
  readonly most: number;
}

/**
 * The page of each firing's kiln by the firing's key. Names that differ in case, spaces and
 * signs alone are one kiln, by the name that it had first.
 */
export function nameKilns(views: Iterable<FiringView>): ReadonlyMap<string, Link> {
  const kilns = new Map<string, Link>();
  const byFiring = new Map<string, Link>();
  const slugFor = nameSlugs("kiln");
  for (const { firing } of [...views].sort(oldestFirst)) {
    const name = firing.record.kiln;
    if (name === undefined) continue;
    const known = kilns.get(bareSlug(name));
    const kiln = known ?? newKiln(slugFor(name), name);
    kilns.set(bareSlug(name), kiln);
    byFiring.set(idKey(firing.id), kiln);
  }
  return byFiring;
}

function newKiln(id: string, name: string): Link {
  return { id, name, url: kilnUrl(id) };
}

/** What is still to come has no day and stands last. */
function oldestFirst(a: FiringView, b: FiringView): number {
  const [x, y] = [a.firing, b.firing];
  return compareIds(x.record.on ?? "9999", y.record.on ?? "9999") || compareIds(x.id, y.id);
}

/** Every kiln, in the order of their names. */
export function listKilns(
  views: Iterable<FiringView>,
  named: ReadonlyMap<string, Link>,
): readonly CatalogueKiln[] {
  const byKiln = new Map<Link, FiringView[]>();
  for (const view of [...views].sort(oldestFirst)) {
    const kiln = named.get(idKey(view.firing.id));
    if (kiln) addTo(byKiln, kiln, view);
  }
  return [...byKiln]
    .map(([kiln, own]) => catalogueKiln(kiln, own))
    .sort((a, b) => compareIds(a.name, b.name));
}

function catalogueKiln(kiln: Link, views: readonly FiringView[]): CatalogueKiln {
  const firings = views.map(kilnFiring);
  return {
    ...kiln,
    heatedBy: [...new Set(views.flatMap(({ firing }) => firing.record.heatedBy ?? []))],
    firings,
    shelves: shelvesOf(firings),
    tilt: findTilt(firings),
  };
}

function kilnFiring({ firing, heat, story }: FiringView): KilnFiring {
  const { on, kind, cone } = firing.record;
  const { accounts, agreement } = story;
  const aim = accounts.find((account) => account.of === "aim");
  const heated = accounts.find((account) => account.of === heat?.from);
  return {
    firing: firingLink(firing),
    on: on ?? null,
    kind,
    aim: cone ?? null,
    shelves: accounts.flatMap(({ shelf, ...account }) =>
      shelf === null ? [] : [{ shelf, off: aim ? offOf(account, aim) : null }],
    ),
    heat: heat && heated && aim ? { from: heat.from, off: offOf(heated, aim) } : null,
    agreement,
  };
}

/** An aim is one place, so what lies off it is as long as the account itself. */
function offOf({ low, high }: Pick<FiringAccount, "low" | "high">, aim: FiringAccount): Off {
  return { low: low - aim.low, high: high - aim.low };
}

interface Read {
  readonly shelf: string;
  readonly off: Off;
}

function readingsOf({ shelves }: KilnFiring): readonly Read[] {
  return shelves.flatMap(({ shelf, off }) => (off ? [{ shelf, off }] : []));
}

/** The end that is known, or the middle where both are. */
function middleOf({ low, high }: Off): number | undefined {
  if (!Number.isFinite(low)) return Number.isFinite(high) ? high : undefined;
  return Number.isFinite(high) ? (low + high) / 2 : low;
}

function shelvesOf(firings: readonly KilnFiring[]): readonly KilnShelf[] {
  const byShelf = new Map<string, number[]>();
  for (const { shelf, off } of firings.flatMap(readingsOf)) {
    const middle = middleOf(off);
    if (middle !== undefined) addTo(byShelf, shelf, middle);
  }
  return [...byShelf]
    .map(([shelf, offs]) => ({
      shelf,
      firings: offs.length,
      median: medianOf(offs),
      coolest: Math.min(...offs),
      hottest: Math.max(...offs),
    }))
    .sort((a, b) => compareShelves(a.shelf, b.shelf));
}

function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const [below = 0, above = 0] = [sorted[middle - 1], sorted[middle]];
  return sorted.length % 2 === 0 ? (below + above) / 2 : above;
}

/** Two shelves of one firing, and how many cones hotter the first was. */
interface Pair {
  readonly hotter: string;
  readonly cooler: string;
  readonly cones: number;
}

function findTilt(firings: readonly KilnFiring[]): KilnTilt | null {
  const pairs = new Map<string, Pair[]>();
  for (const pair of firings.flatMap((firing) => pairsOf(readingsOf(firing)))) {
    const key = JSON.stringify([pair.hotter, pair.cooler]);
    addTo(pairs, key, pair);
  }
  const [uneven] = [...pairs.values()].toSorted((a, b) => sumOf(b) - sumOf(a));
  return uneven && sumOf(uneven) > 0 ? tiltOf(uneven) : null;
}

function sumOf(pairs: readonly Pair[]): number {
  return pairs.reduce((sum, { cones }) => sum + Math.max(0, cones), 0);
}

/** Every two shelves both ways round. */
function pairsOf(read: readonly Read[]): readonly Pair[] {
  return read.flatMap((one) =>
    read
      .filter((other) => other !== one)
      .map((other) => ({
        hotter: one.shelf,
        cooler: other.shelf,
        cones: conesBetween(other.off, one.off),
      })),
  );
}

function tiltOf(pairs: readonly Pair[]): KilnTilt {
  const [{ hotter, cooler } = { hotter: "", cooler: "" }] = pairs;
  return {
    hotter,
    cooler,
    firings: pairs.length,
    times: pairs.filter(({ cones }) => cones > 0).length,
    most: Math.max(...pairs.map(({ cones }) => cones)),
  };
}
