/**
 * A whole archive of typed records whose references have been followed: what checks, chemistry
 * and the catalogue work on. Made by `archive/`; every map is keyed by `idKey` of the id.
 */
import type { KindOfFiring, Removal, Resist, Stage } from "../terms/choices.ts";
import { idKey } from "../terms/ids.ts";
import type { ClayRecord } from "./clay.ts";
import type { FiringRecord } from "./firing.ts";
import type { GlazeRecord } from "./glaze.ts";
import type { MaterialRecord } from "./material.ts";
import type { PageRecord } from "./page.ts";
import type { SetRecord } from "./set.ts";
import type { Areas, Coating } from "./steps.ts";
import type { StudioRecord } from "./studio.ts";
import type { TileRecord } from "./tile.ts";

/** A record with the file it stands in. */
export interface Filed<T> {
  /** The file's stem, as written. */
  readonly id: string;
  /** The file, relative to the archive, with `/` on every system. */
  readonly file: string;
  readonly record: T;
  /** What stands below the front matter: Markdown in its author's words. */
  readonly notes: string;
}

/** What a photograph beside a tile shows, told by its file's name. */
export type PictureRole = "result" | "before" | "detail" | "back";

export interface TilePicture {
  readonly role: PictureRole;
  /** The file, relative to the archive. */
  readonly file: string;
}

interface Written {
  /** The step's index in `layers:`; null for a firing that a load list added. */
  readonly at: number | null;
}

/** A layer of glaze, or of two glazes that fade into each other. */
export interface CoatStep extends Written, Coating {
  readonly step: "coat";
  /** Ids of the glazes, as published: one, or two for a fade, the beginning first. */
  readonly glazes: readonly [string] | readonly [string, string];
  /** Ids of glazes beneath that it laps over although their areas differ. */
  readonly over: readonly string[];
}

export interface ResistStep extends Written {
  readonly step: "resist";
  readonly resist: Resist;
  readonly where: Areas;
  readonly detail: string | null;
}

export interface RemoveStep extends Written {
  readonly step: "remove";
  readonly remove: Removal;
  readonly where: Areas;
  readonly detail: string | null;
}

export interface FiredStep extends Written {
  readonly step: "fired";
  readonly kind: KindOfFiring;
  /** The id of the firing, as published; null where only its kind is known. */
  readonly firing: string | null;
  readonly shelf: string | null;
}

export type TileStep = CoatStep | ResistStep | RemoveStep | FiredStep;

/** A tile with its set's and its studio's defaults filled in and everything it names found. */
export interface Tile extends Filed<TileRecord> {
  /** The id of its set; null where it lies in `tiles/` itself. */
  readonly set: string | null;
  readonly stage: Stage;
  /** The coat stack, bottom first, with the firings of the load lists in their places. */
  readonly steps: readonly TileStep[];
  /** The id of its clay, as published. */
  readonly clay: string | null;
  /** A key of `makers:` in studio.yaml. Never published. */
  readonly maker: string | null;
  readonly pictures: readonly TilePicture[];
  /** True where a photograph was meant for it that is named otherwise: that is told by itself. */
  readonly pictureMisnamed: boolean;
  /** True where it names a firing that cannot be read: then nobody knows all that it went through. */
  readonly firingsUnknown: boolean;
}

/** What a pyrometer or a controller recorded. */
export interface FiringLog {
  /** The file, relative to the archive. */
  readonly file: string;
  /** What it holds, word for word. */
  readonly text: string;
}

/** A firing with its load list spelt out. */
export interface Firing extends Filed<FiringRecord> {
  /** Ids of the tiles in it, by shelf; tiles that name it themselves are not listed here. */
  readonly load: readonly { readonly tile: string; readonly shelf: string }[];
  /** Null without a log. */
  readonly log: FiringLog | null;
}

export interface Archive {
  readonly studio: StudioRecord;
  readonly sets: ReadonlyMap<string, Filed<SetRecord>>;
  readonly tiles: ReadonlyMap<string, Tile>;
  readonly firings: ReadonlyMap<string, Firing>;
  readonly glazes: ReadonlyMap<string, Filed<GlazeRecord>>;
  readonly clays: ReadonlyMap<string, Filed<ClayRecord>>;
  readonly materials: ReadonlyMap<string, Filed<MaterialRecord>>;
  /** The studio's own pages. */
  readonly pages: ReadonlyMap<string, Filed<PageRecord>>;
  /** Keys of all of them, those too that could not be read: what a link may name. */
  readonly pageKeys: ReadonlySet<string>;
}

/** Looks up a record by its id, whatever its case or Unicode form. */
export function findById<T>(map: ReadonlyMap<string, T>, id: string | null): T | undefined {
  return id === null ? undefined : map.get(idKey(id));
}
