/** What the page of a load says. */
import { count } from "../../../templates/words/english/numbers.ts";
import type { Caution } from "../../loads/caution.ts";

/** `12 tiles. 1 must stay out. 3 more to look at.` */
export function sumWords(
  tiles: number,
  cautions: readonly { readonly cautions: readonly Caution[] }[],
  ofLoad: readonly Caution[],
): string {
  const isStop = ({ severity }: Caution) => severity === "error";
  const stopped = cautions.filter((each) => each.cautions.some(isStop)).length;
  const others = cautions.length - stopped;
  const loadStops = ofLoad.some(isStop);
  const told = [
    `${count(tiles, "tile")}.`,
    stopped > 0 && `${stopped === 1 ? "One" : stopped} cannot stay in as it is.`,
    loadStops && "The firing itself has an error.",
    others > 0 && `${others === 1 ? "One" : others}${stopped > 0 ? " more" : ""} to look at.`,
    cautions.length === 0 && !loadStops && tiles > 0 && "Nothing in the records speaks against it.",
  ];
  return told.filter((words) => words !== false).join(" ");
}
