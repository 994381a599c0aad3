/** Control tiles and their twins, made ready for the pages of firings and kilns. */
import type { ControlWithTwins, TwinEntry } from "../../../templates/parts/control-twins.tsx";
import type { CatalogueControl, ControlTwin } from "../../catalogue/kilns/control.ts";
import type { CatalogueKiln } from "../../catalogue/kilns/kilns.ts";
import type { Site } from "./site.ts";

/** Before and after the load that a page is about, so many other loads of the same control tile. */
const neighbours = 2;

/** The control tiles that had a twin in a firing, each with its own, that twin and its neighbours. */
export function controlsBeside(site: Site, firing: string): readonly ControlWithTwins[] {
  return site.catalogue.controls.flatMap((control) => {
    const here = control.twins.findIndex((twin) => twin.firing.id === firing);
    if (here < 0) return [];
    const near = control.twins.filter(
      (twin, i) =>
        twin.tile === control.tile || Math.abs(i - here) <= neighbours || twin.firing.id === firing,
    );
    return ready(site, control, near);
  });
}

/** The control tiles with twins in a kiln, each with those twins. */
export function controlsIn(site: Site, kiln: CatalogueKiln): readonly ControlWithTwins[] {
  return site.catalogue.controls.flatMap((control) => {
    const own = control.twins.filter((twin) => twin.kiln?.id === kiln.id);
    return own.length > 0 ? ready(site, control, own) : [];
  });
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
