/** What the page of the grid says before anything is chosen. */

/** What can be chosen: what its list hands on, and what a reader sees. */
export interface GridChoice {
  readonly key: string;
  readonly words: string;
}

export const gridLede =
  "Across, the glaze on top; down, the glaze underneath. An empty square: nobody here has tried it. A stroke: a glaze is out of stock.";

/** What rows and columns can be in the order of. */
export const gridOrders: readonly GridChoice[] = [
  { key: "tried", words: "how often tried" },
  { key: "name", words: "name" },
  { key: "colour", words: "colour alone" },
  { key: "range", words: "range" },
  { key: "movement", words: "how far they run" },
];

/** What the marks of the printed grid mean. */
export const gridSheetKey =
  "Only what was tried. A full disc: again, yes. Half a disc: again, but changed. A cross: no. A ring: nobody has said. A line at the upper right: it ran, longer from 5 mm, longest from 15 mm.";

/** A place among the choices; what nobody wrote down is said so. */
export function gridChoices(
  labels: readonly string[],
  unwritten: string,
  say: (label: string) => string = (label) => label,
): readonly GridChoice[] {
  return labels.map((label, place) => ({
    key: String(place),
    words: label === "" ? unwritten : say(label),
  }));
}

/** `Cone 6`, or what is not fired yet. */
export function coneHeading(label: string): string {
  return label === "" ? "Not fired yet, or the cone is not written down" : `Cone ${label}`;
}
