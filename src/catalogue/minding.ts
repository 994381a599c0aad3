/** What to mind with each glaze of a tile, in short: for tiles, cards and loads of a kiln. */

import type { Caution } from "../chemistry/cautions/cautions.ts";
import type { Atmosphere } from "../terms/choices.ts";
import { idKey } from "../terms/ids.ts";
import { addTo } from "../terms/index-by.ts";
import type { Link } from "./link.ts";

export interface Minding {
  readonly glaze: Link;
  /** What may never be left out, such as “holds lead”. */
  readonly loud: readonly string[];
  /** All the rest, such as “silica dust”; what the studio wrote stands in its own words. */
  readonly quiet: readonly string[];
}

/**
 * Every caution of some glazes in short.
 *
 * @param atmosphere of the fire; null where it is not known, and then nothing is left out for it
 */
export function mindingOf(
  glazes: readonly Link[],
  hazards: ReadonlyMap<string, readonly Caution[]>,
  atmosphere: Atmosphere | null,
): readonly Minding[] {
  return glazes.flatMap((glaze) => {
    const cautions = (hazards.get(idKey(glaze.id)) ?? []).filter((it) => holdsIn(it, atmosphere));
    const short = (isLoud: boolean) => [
      ...new Set(cautions.filter((it) => it.isLoud === isLoud).map(({ inShort }) => inShort)),
    ];
    const minding = { glaze, loud: short(true), quiet: short(false) };
    return cautions.length > 0 ? [minding] : [];
  });
}

/** The same for glazes as their pages show them, fired as nobody knows. */
export function mindingOfGlazes(
  glazes: readonly (Link & { readonly hazards: readonly Caution[] })[],
): readonly Minding[] {
  const hazards = new Map(glazes.map((glaze) => [idKey(glaze.id), glaze.hazards]));
  const links = glazes.map(({ id, name, url }) => ({ id, name, url }));
  return mindingOf(links, hazards, null);
}

/** Whether a caution holds in such a fire: chromium turns hexavalent where there is air. */
function holdsIn({ code }: Caution, atmosphere: Atmosphere | null): boolean {
  return code !== "chromium-in-oxidation" || atmosphere !== "reduction";
}

/** Something that a load gives off, and the glazes that it is from. */
export interface LoadFume {
  readonly words: string;
  readonly glazes: readonly Link[];
}

/** What a load of the kiln gives off: the cautions for its glazes that speak of the kiln. */
export function fumesOf(
  glazes: readonly (Link & { readonly hazards: readonly Caution[] })[],
  atmosphere: Atmosphere | null,
): readonly LoadFume[] {
  const inKiln = new Map(
    glazes.map(({ id, hazards }) => [idKey(id), hazards.filter(({ code }) => tellsOfKiln(code))]),
  );
  const links = glazes.map(({ id, name, url }) => ({ id, name, url }));
  const from = new Map<string, Link[]>();
  for (const { glaze, loud, quiet } of mindingOf(links, inKiln, atmosphere))
    for (const words of [...loud, ...quiet]) addTo(from, words, glaze);
  return [...from].map(([words, of]) => ({ words, glazes: of }));
}

function tellsOfKiln(code: Caution["code"]): boolean {
  return code === "kiln-fumes" || code === "chromium-in-oxidation" || code === "poison";
}
