/** Asks for the layers of a tile, one after another, and tells each back in the words of the tile's page. */
import type { Shape } from "../editing/shape.ts";
import type { ShortNames } from "../reader/short-form/names.ts";
import { readShortForm } from "../reader/short-form/read-short-form.ts";
import { renderShortForm } from "../reader/short-form/render-short-form.ts";
import type { SourceMap } from "../records/read.ts";
import { mostLayers } from "../terms/limits.ts";
import { type Asking, askField, askRest, namedChoices } from "./ask-field.ts";
import type { Choice } from "./prompts.ts";

export interface LayersAsking extends Asking {
  readonly shortNames: ShortNames;
  /** The layers in words, the lowest first. */
  readonly tellLayers: (line: string) => readonly string[];
}

const done = "…done";
const back = "…back";
const short = "…short";

/** What a layer may begin with, besides a glaze. */
const others: readonly (Choice & { readonly key: string })[] = [
  { value: "…resist", key: "resist", label: "A resist", hint: "Keeps the next coats off." },
  {
    value: "…remove",
    key: "remove",
    label: "Something taken off",
    hint: "Wiped, scraped, all of it.",
  },
  { value: "…fired", key: "fired", label: "A firing", hint: "Bisque, or one between two layers." },
  { value: "…fade", key: "fade", label: "Two glazes that run into each other" },
];

/** The fields that are asked for of every layer that has them; the rest may be added. */
const asked = ["coats", "by", "where"];

/**
 * Asks for the layers, the lowest first, and puts them into the draft as `layers`.
 *
 * @param step what a layer may be
 */
export async function askLayers(asking: LayersAsking, step: Shape): Promise<void> {
  const { prompts } = asking;
  for (;;) {
    const layers = layersOf(asking);
    const chosen = await chooseNext(asking, layers.length);
    if (chosen === done) return;
    if (chosen === back) asking.draft.put(["layers", layers.length - 1], undefined);
    else if (chosen === short) await askLine(asking, layers);
    else await askLayer(asking, step, chosen, layers.length);
    const told = asking.tellLayers(renderShortForm(layersOf(asking)));
    prompts.tell(told.map((words, i) => `${i + 1}. ${words}`).join("\n") || "No layer so far.");
  }
}

function layersOf({ draft }: Asking): readonly SourceMap[] {
  const { layers } = draft.source;
  return Array.isArray(layers) ? (layers as readonly SourceMap[]) : [];
}

function chooseNext({ prompts, names }: LayersAsking, count: number): Promise<string> {
  const glazes = namedChoices(names, ["jar", "glaze"]);
  const ends: readonly Choice[] = [
    ...(count > 0 ? [{ value: done, label: "That is all" }] : []),
    ...(count > 0 ? [{ value: back, label: "Take the last layer back" }] : []),
  ];
  const line = { value: short, label: "Several in short form", hint: "As in 7 x2; 3 x1 top." };
  const whole = count < mostLayers ? [...glazes, ...others, line] : [];
  return prompts.choose(
    count === 0
      ? "What went on first? A jar's number, a glaze's name, or what else was done."
      : "What went on next?",
    [...ends, ...whole],
  );
}

async function askLayer(
  asking: LayersAsking,
  step: Shape,
  chosen: string,
  at: number,
): Promise<void> {
  const key = others.find(({ value }) => value === chosen)?.key ?? "glaze";
  const map = step.maps.find(({ fields }) => fields.get(key)?.required);
  const head = map?.fields.get(key);
  if (!map || !head) return;
  const path = ["layers", at];
  if (key === "glaze") asking.draft.put([...path, key], chosen);
  else await askField(asking, [...path, key], head);
  for (const name of asked) {
    const field = map.fields.get(name);
    if (field) await askField(asking, [...path, name], field);
  }
  await askRest(asking, path, map);
}

/** Asks until every word of the line is understood. */
async function askLine(asking: LayersAsking, before: readonly SourceMap[]): Promise<void> {
  const lead = renderShortForm(before);
  const whole = (line: string) => (lead === "" ? line : `${lead}; ${line}`);
  const read = (line: string) => readShortForm(whole(line), asking.shortNames);
  const line = await asking.prompts.write(
    "The layers, the lowest first, as in “7 x2; 3 x1 top; wax motif”?",
    {
      faultOf: (typed) => {
        if (typed.trim() === "") return undefined;
        const [fault] = read(typed).faults;
        return fault && `${fault.message}. ${fault.hint}`;
      },
    },
  );
  if (line.trim() === "") return;
  asking.draft.put(
    ["layers"],
    read(line).steps.map(({ layer }) => layer),
  );
}
