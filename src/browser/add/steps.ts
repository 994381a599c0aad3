/**
 * The steps of a tile as the form holds them: every field a text, empty where nothing is said, so that
 * what somebody is still typing has a place. Two more forms of them are made here: what a record holds,
 * and what is drawn and said.
 */
import type { WrittenField, WrittenStep } from "../../publish/add-file.ts";
import type { TileStep } from "../../records/archive.ts";
import {
  type Area,
  areas,
  covers,
  dryings,
  kindsOfFiring,
  removals,
  resists,
  thicknesses,
  ways,
} from "../../terms/choices.ts";

interface Numbered {
  /** Tells a step from the others for as long as the form lives. */
  readonly key: number;
}

interface Placed {
  /** Empty for all over. */
  readonly where: readonly Area[];
  readonly detail: string;
}

/** Texts of a layer of glaze that are empty where nothing is said. */
const coatTexts = ["coats", "cover", "by", "thickness", "seconds", "gravity", "dried"] as const;
type CoatText = (typeof coatTexts)[number];

export interface DraftCoat extends Numbered, Placed, Readonly<Record<CoatText, string>> {
  readonly step: "coat";
  readonly glaze: string;
  /** The glaze that it runs into; empty where it is one glaze. */
  readonly fadesTo: string;
  readonly along: string;
  readonly over: readonly string[];
  readonly touchUp: boolean;
}

export interface DraftMark extends Numbered, Placed {
  readonly step: "resist" | "remove";
  readonly what: string;
}

export interface DraftFiring extends Numbered {
  readonly step: "fired";
  /** A load's id, or a kind. */
  readonly what: string;
  readonly shelf: string;
}

export type DraftStep = DraftCoat | DraftMark | DraftFiring;

const nothingSaid = {
  ...{ coats: "", cover: "", by: "", thickness: "", seconds: "", gravity: "", dried: "" },
  ...{ fadesTo: "", along: "", over: [], touchUp: false, where: [], detail: "" },
};

export function newCoat(key: number, glaze: string): DraftCoat {
  return { ...nothingSaid, key, step: "coat", glaze };
}

export function newMark(key: number, step: DraftMark["step"], what: string): DraftMark {
  return { key, step, what, where: [], detail: "" };
}

export function newFiring(key: number, what: string): DraftFiring {
  return { key, step: "fired", what, shelf: "" };
}

/** A step as a record holds it, with nothing for what is not said. */
export function writeStep(step: DraftStep): WrittenStep {
  if (step.step === "fired") return told({ fired: step.what, shelf: step.shelf.trim() });
  const place = { where: step.where, detail: step.detail.trim() };
  if (step.step !== "coat") return told({ [step.step]: step.what, ...place });
  const { glaze, fadesTo, along, over, touchUp } = step;
  const texts = coatTexts.map((name) => [name, step[name].trim()] as const);
  return told({
    ...(fadesTo === ""
      ? { glaze }
      : {
          fade: told({ from: glaze, to: fadesTo, along: along.trim() }) as Record<string, string>,
        }),
    ...Object.fromEntries(texts),
    ...place,
    over,
    "touch-up": touchUp ? "yes" : "",
  });
}

function told(fields: Readonly<Record<string, WrittenField>>): WrittenStep {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value.length !== 0));
}

/** The step that a record holds; undefined where it is none that the form knows. */
export function readStep(written: WrittenStep, key: number): DraftStep | undefined {
  const text = (name: string) => (typeof written[name] === "string" ? written[name] : "");
  const place = { where: listOf(written.where).filter(isArea), detail: text("detail") };
  if (text("fired")) return { key, step: "fired", what: text("fired"), shelf: text("shelf") };
  if (text("resist")) return { key, step: "resist", what: text("resist"), ...place };
  if (text("remove")) return { key, step: "remove", what: text("remove"), ...place };
  const { from = text("glaze"), to = "", along = "" } = mapOf(written.fade);
  if (!from) return undefined;
  const texts = Object.fromEntries(coatTexts.map((name) => [name, text(name)]));
  return {
    ...newCoat(key, from),
    ...(texts as Record<CoatText, string>),
    ...place,
    fadesTo: to,
    along,
    over: listOf(written.over),
    touchUp: text("touch-up") === "yes",
  };
}

function mapOf(value: WrittenField | undefined): Readonly<Record<string, string>> {
  return typeof value === "object" && !Array.isArray(value)
    ? (value as Readonly<Record<string, string>>)
    : {};
}

function listOf(value: WrittenField | undefined): readonly string[] {
  if (typeof value === "string") return [value];
  return Array.isArray(value) ? value : [];
}

function isArea(word: string): word is Area {
  return (areas as readonly string[]).includes(word);
}

/** A step as it is drawn and said; what cannot be understood is left out of both. */
export function toTileStep(step: DraftStep, at: number): TileStep {
  if (step.step === "fired") return toFiredStep(step, at);
  if (step.step === "coat") return toCoatStep(step, at);
  if (step.step === "resist")
    return { step: "resist", resist: oneOf(resists, step.what) ?? "wax", at, ...toPlace(step) };
  return { step: "remove", remove: oneOf(removals, step.what) ?? "wipe", at, ...toPlace(step) };
}

function toCoatStep(step: DraftCoat, at: number): TileStep {
  return {
    step: "coat",
    at,
    glazes: step.fadesTo === "" ? [step.glaze] : [step.glaze, step.fadesTo],
    over: step.over,
    along: step.along.trim() || null,
    coats: numberIn(step.coats, 1, 50),
    cover: oneOf(covers, step.cover),
    by: oneOf(ways, step.by),
    thickness: oneOf(thicknesses, step.thickness) ?? "usual",
    seconds: numberIn(step.seconds, 0, 1e4),
    gravity: numberIn(step.gravity, 1, 3),
    dried: oneOf(dryings, step.dried) ?? "touch-dry",
    touchUp: step.touchUp,
    ...toPlace(step),
  };
}

function toPlace({ where, detail }: Placed) {
  return { where: areasOf(where), detail: detail.trim() || null };
}

function toFiredStep({ what, shelf }: DraftFiring, at: number): TileStep {
  const kind = oneOf(kindsOfFiring, what);
  return {
    step: "fired",
    at,
    kind: kind ?? "glaze",
    firing: kind ? null : what,
    shelf: shelf.trim() || null,
  };
}

function areasOf([first, ...rest]: readonly Area[]): readonly [Area, ...Area[]] {
  return first === undefined ? ["all"] : [first, ...rest];
}

function oneOf<const T extends string>(known: readonly T[], word: string): T | null {
  return known.find((each) => each === word) ?? null;
}

function numberIn(text: string, from: number, to: number): number | null {
  const value = text.trim() === "" ? Number.NaN : Number(text);
  return value >= from && value <= to ? value : null;
}
