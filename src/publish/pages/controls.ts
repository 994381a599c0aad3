/** Control tiles and their twins, made ready for the pages of firings and kilns. */
import type { ControlWithTwins, TwinEntry } from "../../../templates/parts/control-twins.tsx";
import { twinsSummary } from "../../../templates/words/tile/control.ts";
import type { CatalogueControl, ControlTwin } from "../../catalogue/kilns/control.ts";
import type { CatalogueKiln } from "../../catalogue/kilns/kilns.ts";
import type { Site } from "./site.ts";

/** Before and after the load that a page is about, so many other loads of the same control tile. */
const neighbours = 2;

/** A load has the control tiles of one set or two; the others stand among its tiles. */
const mostControlsBeside = 6;

/** The control tiles that had a twin in a firing, each with its own, that twin and its neighbours. */
export function controlsBeside(
  site: Site,
  firing: string,
): { readonly controls: readonly ControlWithTwins[]; readonly others: number } {
  const beside = site.catalogue.controls.flatMap((control) => {
    const here = control.twins.findIndex((twin) => twin.firing.id === firing);
    if (here < 0) return [];
    const near = control.twins.filter(
      (twin, i) =>
        twin.tile === control.tile || Math.abs(i - here) <= neighbours || twin.firing.id === firing,
    );
    return ready(site, control, near);
  });
  const controls = beside.slice(0, mostControlsBeside);
  return { controls, others: beside.length - controls.length };
}

/** So many control tiles on a page, and so many of the newest twins of each. */
const [mostControls, mostTwins] = [4, 12];

/** The control tiles that stood in a kiln the latest, and how many more there are. */
export interface ControlsOfKiln {
  readonly controls: readonly (ControlWithTwins & {
    /** How its twins came out in this kiln: all of them. */
    readonly summary: string;
    /** How many older twins are not shown. */
    readonly older: number;
  })[];
  /** Control tiles that are not shown. */
  readonly others: number;
}

/** The control tiles with twins in a kiln, each with those twins. */
export function controlsIn(site: Site, kiln: CatalogueKiln): ControlsOfKiln {
  const own = site.catalogue.controls
    .map((control) => ({ ...control, twins: control.twins.filter(isIn(kiln)) }))
    .filter(({ twins }) => twins.length > 0);
  const latest = [...own]
    .sort((a, b) => compareDays(lastDay(b), lastDay(a)))
    .slice(0, mostControls);
  const controls = own
    .filter((control) => latest.includes(control))
    .flatMap((control) => {
      const shown = control.twins.slice(-mostTwins);
      const summary = twinsSummary(control.twins, control.tile);
      const older = control.twins.length - shown.length;
      return ready(site, control, shown).map((one) => ({ ...one, summary, older }));
    });
  return { controls, others: own.length - latest.length };
}

function isIn(kiln: CatalogueKiln): (twin: ControlTwin) => boolean {
  return (twin) => twin.kiln?.id === kiln.id;
}

function lastDay({ twins }: CatalogueControl): string {
  return twins.at(-1)?.on ?? "";
}

function compareDays(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function ready(
  site: Site,
  control: CatalogueControl,
  twins: readonly ControlTwin[],
): readonly ControlWithTwins[] {
  const [tile] = site.entries([control.tile]);
  const { trust } = site.catalogue;
  return tile
    ? [
        {
          control: tile,
          twins: twins.flatMap((twin) => entryOf(site, twin)),
          unknown: control.unknown,
          trust,
        },
      ]
    : [];
}

function entryOf(site: Site, twin: ControlTwin): readonly TwinEntry[] {
  const [entry] = site.entries([twin.tile]);
  return entry ? [{ twin, entry }] : [];
}
