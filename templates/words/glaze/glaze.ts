/** What a glaze is, in words. */

import type { GlazeFacts } from "../../../src/catalogue/glazes.ts";
import type { KindOfGlaze, LabelClaim } from "../../../src/terms/choices.ts";
import { article, count, listed } from "../english/numbers.ts";
import { coneRangeWords } from "../firing/cones.ts";

const kinds: Readonly<Record<KindOfGlaze, string>> = {
  glaze: "glaze",
  onglaze: "onglaze",
  "oxide-wash": "oxide wash",
  slip: "slip",
  underglaze: "underglaze",
};

export function glazeKind(kind: KindOfGlaze): string {
  return kinds[kind];
}

/** `A satin glaze for cones 5–6, mixed here from 7 materials.` */
export function glazeSentence(glaze: GlazeFacts): string {
  const { kind, cones } = glaze;
  const surface = glaze.surface && kind === "glaze" ? `${glaze.surface} ` : "";
  const first = `${surface}${kinds[kind]}`;

  const range = cones ? ` for ${coneRangeWords(cones)}` : "";
  return `${article(first)} ${first}${range}, ${originWords(glaze)}.`;
}

function originWords({ bought, blend, by, ingredients }: GlazeFacts): string {
  if (bought) {
    const range = bought.range ? `, “${bought.range}” range` : "";
    const colour = bought.colour ? `, ${bought.colour}` : "";
    return `bought: ${bought.maker}${range}${colour}`;
  }
  if (blend)
    return `blended here from ${blend.length} glazes, by ${by === "volume" ? "volume" : "dry weight"}`;
  return `mixed here from ${count(ingredients?.length ?? 0, "material")}`;
}

const claims: Readonly<Record<LabelClaim, string>> = {
  "food-contact": "food contact (alone, as directed)",
  "non-toxic": "non-toxic as supplied",
  "not-for-food": "not for food",
};

/** The label's own words, for this glaze alone. */
export function labelSentence({ label }: GlazeFacts): string {
  return listed(label.map((claim) => claims[claim]));
}
