/** Where the colours of a layer drawing come from, and what is hatched because nobody measured it. */
import type { VNode } from "preact";
import { clayColour } from "../../src/catalogue/colours/clay-colour.ts";
import { listed } from "../words/english/numbers.ts";
import type { LayerView, Paint } from "./layer-view.ts";

export function DrawingKey({ view }: { readonly view: LayerView }): VNode | null {
  const sentences = keySentences(view);
  return sentences.length === 0 ? null : <p class="quiet key">{sentences.join(" ")}</p>;
}

/** `In the colours measured alone: Sky on Buff at cone 6. Hatched: Kelp, not yet measured alone and all over.` */
export function keySentences(view: LayerView): readonly string[] {
  const paints = view.lanes.flatMap((lane) => (lane.lane === "coat" ? lane.paints : []));
  const places = new Map<string, Set<string>>();
  for (const { name, measured } of paints) {
    if (measured === null) continue;
    const place = placeWords(measured);
    places.set(place, (places.get(place) ?? new Set()).add(name));
  }
  const from = [...places].map(([place, names]) => `${listed([...names])} ${place}`.trim());
  const unmeasured = paints.filter(({ measured }) => measured === null).map(({ name }) => name);
  const hatched = listed([...new Set(unmeasured)]);
  const bare = clayColour(view.clay) === null;
  return [
    ...(from.length > 0 ? [`Colours as each glaze measured by itself: ${from.join("; ")}.`] : []),
    ...(hatched ? [`Hatched: ${hatched}, not yet measured by itself all over a tile.`] : []),
    ...(bare ? ["The clay is hatched: its colour is not recorded."] : []),
  ];
}

function placeWords({ clay, cone }: NonNullable<Paint["measured"]>): string {
  return [clay && `on ${clay}`, cone && `at cone ${cone}`].filter(Boolean).join(" ");
}
