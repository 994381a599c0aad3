/** Small archives to try the rules on. */
import { runChecks } from "../../src/checks/all.ts";
import type { Extra } from "../../src/checks/check.ts";
import type {
  Archive,
  CoatStep,
  Filed,
  FiredStep,
  Firing,
  RemoveStep,
  ResistStep,
  Tile,
  TileStep,
} from "../../src/records/archive.ts";
import type { ClayRecord } from "../../src/records/clay.ts";
import type { FiringRecord } from "../../src/records/firing.ts";
import type { GlazeRecord } from "../../src/records/glaze.ts";
import type { MaterialRecord } from "../../src/records/material.ts";
import type { Problem } from "../../src/records/problem.ts";
import type { SetRecord } from "../../src/records/set.ts";
import { type Areas, coatingOf, type GlazeStep } from "../../src/records/steps.ts";
import type { Result, TileRecord } from "../../src/records/tile.ts";
import type { KindOfFiring, Removal, Resist } from "../../src/terms/choices.ts";
import { type Cone, type ConeRange, parseCone, parseConeRange } from "../../src/terms/cones.ts";
import { idKey } from "../../src/terms/ids.ts";
import { typedCommand } from "../../src/terms/typed-command.ts";

export function cone(text: string): Cone {
  const reading = parseCone(text, "any");
  if (!reading.ok) throw new Error(`no cone: ${text}`);
  return reading.cone;
}

export function cones(text: string): ConeRange {
  const reading = parseConeRange(text);
  if (!reading.ok) throw new Error(`no range of cones: ${text}`);
  return reading.range;
}

const all: Areas = ["all"];

/** A layer of a glaze, or of a fade between two. */
export function coat(
  glaze: string | readonly [string, string],
  more: Partial<CoatStep> = {},
): CoatStep {
  return {
    ...coatingOf({ step: "glaze", glaze: "" } as GlazeStep),
    coats: 1,
    step: "coat",
    at: 0,
    glazes: typeof glaze === "string" ? [glaze] : glaze,
    over: [],
    ...more,
  };
}

/** A firing that a step names. */
export function fired(firing: string | null, kind: KindOfFiring = "glaze"): FiredStep {
  return { step: "fired", at: 0, kind, firing, shelf: null };
}

/** A firing that a load list added after the last layer. */
export function loaded(
  firing: string,
  shelf: string | null = null,
  kind: KindOfFiring = "glaze",
): FiredStep {
  return { step: "fired", at: null, kind, firing, shelf };
}

export function resist(what: Resist, where: Areas = all): ResistStep {
  return { step: "resist", at: 0, resist: what, where, detail: null };
}

export function removed(what: Removal, where: Areas = all): RemoveStep {
  return { step: "remove", at: 0, remove: what, where, detail: null };
}

/** A result that says nothing but which firing it came after. */
export function result(after?: string): Result {
  return {
    after,
    surface: undefined,
    effects: undefined,
    faults: undefined,
    run: undefined,
  } as Result;
}

type About = Partial<Omit<TileRecord, "layers">>;

/** A tile of these steps. Its photograph is there where it has a result. */
export function tile(
  id: string,
  steps: readonly TileStep[],
  about: About = {},
  more: Partial<Tile> = {},
): Tile {
  const placed = steps.map((step, at) => (step.at === null ? step : { ...step, at }));
  return {
    id,
    file: `tiles/${id}.md`,
    notes: "",
    record: { layers: [], ...about } as unknown as TileRecord,
    set: null,
    stage: stageOf(placed, about),
    steps: placed,
    clay: about.clay ?? null,
    maker: null,
    firingsUnknown: false,
    pictureMisnamed: false,
    pictures: about.result ? [{ role: "result", file: `tiles/${id}.jpg` }] : [],
    ...more,
  };
}

function stageOf(steps: readonly TileStep[], { fate, result: results }: About): Tile["stage"] {
  if (fate) return "lost";
  if (results) return "recorded";
  const lastCoat = steps.findLastIndex((step) => step.step === "coat");
  return steps.slice(lastCoat + 1).some((step) => step.step === "fired") ? "fired" : "waiting";
}

function filed<R>(folder: string, id: string, record: unknown): Filed<R> {
  return { id, file: `${folder}/${id}.md`, notes: "", record: record as R };
}

export function clay(id: string, about: Partial<ClayRecord> = {}): Filed<ClayRecord> {
  return filed("recipes/clays", id, { name: id, ...about });
}

/** A glaze from a jar, unless it says what it is mixed of. */
export function glaze(id: string, about: Partial<GlazeRecord> = {}): Filed<GlazeRecord> {
  const mixed = about.ingredients ?? about.blend;
  const origin = mixed ? {} : { bought: { maker: "Oxbow" } };
  return filed("recipes/glazes", id, { name: id, kind: "glaze", ...origin, ...about });
}

export function material(id: string, about: Partial<MaterialRecord> = {}): Filed<MaterialRecord> {
  return filed("recipes/materials", id, { name: id, ...about });
}

export function firing(id: string, about: Partial<FiringRecord> = {}): Firing {
  const record = { kind: "glaze", ...about };
  return { ...filed<FiringRecord>("tiles/firings", id, record), load: [], log: null };
}

export function set(id: string, about: Partial<SetRecord> = {}): Filed<SetRecord> {
  return { ...filed<SetRecord>("tiles", id, { name: id, ...about }), file: `tiles/${id}/set.md` };
}

interface Parts {
  readonly tiles?: readonly Tile[];
  readonly glazes?: readonly Filed<GlazeRecord>[];
  readonly clays?: readonly Filed<ClayRecord>[];
  readonly materials?: readonly Filed<MaterialRecord>[];
  readonly firings?: readonly Firing[];
  readonly sets?: readonly Filed<SetRecord>[];
}

export function archive(parts: Parts): Archive {
  return {
    studio: { format: "1", studio: "Eelgate Pottery" } as Archive["studio"],
    tiles: byId(parts.tiles),
    glazes: byId(parts.glazes),
    clays: byId(parts.clays),
    materials: byId(parts.materials),
    firings: byId(parts.firings),
    sets: byId(parts.sets),
    pages: new Map(),
    pageKeys: new Set(),
  };
}

function byId<T extends { readonly id: string }>(records: readonly T[] = []) {
  return new Map(records.map((record) => [idKey(record.id), record]));
}

/** Nothing found out by other rooms. */
export const nothing: Extra = {
  pictures: new Map(),
  withoutChemistry: new Map(),
  heats: new Map(),
  asTyped: typedCommand({ program: "npx tilebook", shell: "posix", archive: null }),
};

/** The codes of every problem of an archive. */
export function codesIn(parts: Parts, extra: Extra = nothing): readonly string[] {
  return runChecks(archive(parts), extra).map(({ code }) => code);
}

/** Every problem of an archive, whole, as it might be read. */
export function tell(parts: Parts, extra: Extra = nothing): string {
  return runChecks(archive(parts), extra).map(tellProblem).join("\n\n");
}

export function tellProblem({ severity, code, file, path, message, hint }: Problem): string {
  return `${severity} ${code} ${[file, ...path].join(" › ")}\n${message}\n${hint}`;
}
