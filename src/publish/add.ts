/** Makes the files that the tile form is filled with. */

import { sheetsUrl } from "../catalogue/addresses.ts";
import type { CatalogueStep } from "../catalogue/kilns/tile-firings.ts";
import { mindingOfGlazes } from "../catalogue/minding.ts";
import type { CatalogueSet } from "../catalogue/sets.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import type { Catalogue } from "../catalogue/types.ts";
import type { CoatStep } from "../records/archive.ts";
import { bucketOf, countBuckets } from "../terms/bucket.ts";
import type { Area } from "../terms/choices.ts";
import { formatConeRange } from "../terms/cones.ts";
import { compareIds, foldCodes } from "../terms/ids.ts";
import { addTo } from "../terms/index-by.ts";
import type {
  FormDefaults,
  FormFiring,
  FormGlaze,
  FormLayers,
  FormSet,
  FormSite,
  WrittenField,
  WrittenStep,
} from "./add-file.ts";
import type { DataFile } from "./data/entry.ts";

/** The file that the form cannot do without. */
export const formSitePath = "data/add.js";

/** The layers of so many tiles are in one file: some 15 KB. */
const tilesInAFile = 96;

/** A tile that is not fired yet went through one of the last loads, if through any. */
const mostFirings = 24;

/** The files as classic scripts, which a page opened from a folder can load as well. */
export function makeFormScripts(catalogue: Catalogue): readonly DataFile[] {
  const site = formSite(catalogue);
  const files = new Map<number, CatalogueTile[]>();
  for (const tile of catalogue.tiles) addTo(files, bucketOf(tile.id, site.layerFiles), tile);
  const layers = [...files].map(([file, tiles]) => ({
    path: `data/add/layers-${file + 1}.js`,
    content: `(self.tilebookLayers??={})["${file}"]=${JSON.stringify(layersOf(tiles))};\n`,
  }));
  return [
    { path: formSitePath, content: `self.tilebookForm=${JSON.stringify(site)};\n` },
    ...layers,
  ];
}

/** What the form has to know of a site. */
export function formSite(catalogue: Catalogue): FormSite {
  const { studio, sets, clays, firings, tiles } = catalogue;
  return {
    studio: studio.name,
    sets: sets.map(formSet),
    glazes: glazesOf(catalogue),
    clays: clays.map(({ id, name, cones, colour, reclaim }) => ({
      id,
      name,
      cones: cones ? formatConeRange(cones) : undefined,
      colour: colour ?? undefined,
      reclaim: reclaim || undefined,
    })),
    firings: firings.slice(0, mostFirings).map(formFiring),
    taken: foldCodes(tiles.flatMap(({ id, formerly }) => [id, ...formerly])),
    handingIn: {
      by: studio.handsInBy,
      words: studio.handingIn ?? undefined,
      repository: studio.repository ?? undefined,
    },
    layerFiles: countBuckets(tiles.length, tilesInAFile),
  };
}

function formSet(set: CatalogueSet): FormSet {
  const { id, name, begins, ends, jars, reserved, codes, gives } = set;
  return {
    id,
    name,
    begins: begins ?? undefined,
    ends: ends ?? undefined,
    jars: jars.map(({ jar, id: glaze }) => [jar, glaze] as const),
    codes: foldCodes(reserved),
    control: set.control ?? undefined,
    gives: defaultsOf(gives),
    sheets: codes.length > 0 ? sheetsUrl("notes", id) : undefined,
  };
}

function defaultsOf(gives: CatalogueSet["gives"]): FormDefaults {
  return {
    formed: gives.formed ?? undefined,
    glazed: gives.glazed ?? undefined,
    clay: gives.clay?.id,
    "clay-batch": gives.clayBatch ?? undefined,
    texture: gives.texture ?? undefined,
    shape: gives.shape ?? undefined,
    angle: gives.angle?.toString(),
    maker: gives.maker || undefined,
  };
}

function glazesOf({ glazes }: Catalogue): readonly FormGlaze[] {
  const minding = new Map(mindingOfGlazes(glazes).map((told) => [told.glaze.id, told]));
  return glazes.map(({ id, name, url, kind, cones, cover, moves, tone, stocked, shownAs }) => ({
    id,
    name,
    url,
    kind,
    cones: cones ? formatConeRange(cones) : undefined,
    cover: cover ?? undefined,
    moves: moves ?? undefined,
    tone: tone ?? undefined,
    hex: shownAs?.colour.hex,
    stocked: stocked ? undefined : false,
    loud: notEmpty(minding.get(id)?.loud),
    quiet: notEmpty(minding.get(id)?.quiet),
  }));
}

function notEmpty<T>(list: readonly T[] | undefined): readonly T[] | undefined {
  return list && list.length > 0 ? list : undefined;
}

function formFiring(firing: Catalogue["firings"][number]): FormFiring {
  const { id, kind, on, cone, atmosphere } = firing;
  return {
    id,
    kind,
    on: on ?? undefined,
    cone: cone ?? undefined,
    atmosphere: atmosphere ?? undefined,
  };
}

function layersOf(tiles: readonly CatalogueTile[]): FormLayers {
  const inOrder = [...tiles].sort((a, b) => compareIds(a.id, b.id));
  return Object.fromEntries(inOrder.map(({ id, steps }) => [id, writtenSteps(steps)]));
}

/**
 * A tile's steps as a record of a new tile holds them, up to its last layer: another tile's loads are
 * not its own, so of a firing its kind alone.
 */
export function writtenSteps(steps: readonly CatalogueStep[]): readonly WrittenStep[] {
  const last = steps.findLastIndex(({ step }) => step !== "fired");
  return steps.slice(0, last + 1).map((step) => {
    if (step.step === "fired") return { fired: step.kind };
    if (step.step === "coat") return writtenCoat(step);
    const what = step.step === "resist" ? { resist: step.resist } : { remove: step.remove };
    return { ...what, ...writtenPlace(step) };
  });
}

function writtenCoat(step: CoatStep): WrittenStep {
  const [glaze, to] = step.glazes;
  return {
    ...(to === undefined
      ? { glaze }
      : { fade: told({ from: glaze, to, along: step.along }) as Record<string, string> }),
    ...told({
      coats: step.coats?.toString(),
      cover: step.cover,
      by: step.by,
      thickness: step.thickness === "usual" ? null : step.thickness,
      seconds: step.seconds?.toString(),
      gravity: step.gravity?.toString(),
      dried: step.dried === "touch-dry" ? null : step.dried,
      over: step.over.length > 0 ? step.over : null,
      "touch-up": step.touchUp ? "yes" : null,
    }),
    ...writtenPlace(step),
  };
}

function writtenPlace({
  where,
  detail,
}: {
  readonly where: readonly Area[];
  readonly detail: string | null;
}): WrittenStep {
  return told({ where: where.includes("all") ? null : where, detail });
}

/** Without what says nothing. */
function told(fields: Readonly<Record<string, WrittenField | null | undefined>>): WrittenStep {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) => (value == null ? [] : [[name, value]])),
  );
}
