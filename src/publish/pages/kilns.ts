/** Pages of each kiln. */
import { FiringsPage } from "../../../templates/pages/firings-page.tsx";
import { KilnPage } from "../../../templates/pages/kiln-page.tsx";
import { kilnSentence } from "../../../templates/words/firing/kiln.ts";
import { turnedUrl } from "../../catalogue/addresses.ts";
import type { CatalogueKiln } from "../../catalogue/kilns/kilns.ts";
import { definePage, type Page } from "../page.ts";
import { controlsIn } from "./controls.ts";
import { toFiringLine } from "./firing-lines.ts";
import type { Site } from "./site.ts";
import { cutGroups, firingsOnAPage } from "./turning.ts";

export function kilnPages(site: Site): readonly Page[] {
  return site.catalogue.kilns.flatMap((kiln) => pagesOfKiln(site, kiln));
}

/** The first page tells of the kiln, the others go on with its firings. */
function pagesOfKiln(site: Site, kiln: CatalogueKiln): readonly Page[] {
  const { name, url } = kiln;
  const own = site.catalogue.firings.filter((firing) => firing.kiln?.id === kiln.id);
  const cuts = cutGroups(url, [{ title: "", items: own }], firingsOnAPage);
  return cuts.map(({ groups, turn }) => {
    const path = turnedUrl(url, turn.here);
    const firings = groups.flatMap(({ items }) => items.map(toFiringLine));
    const frame = site.frame(path, url);
    if (turn.here > 0)
      return definePage({
        path,
        component: FiringsPage,
        props: () => ({
          frame,
          title: name,
          sentence: kilnSentence(kiln),
          firings,
          turn,
          kilns: [],
        }),
        search: null,
      });
    const { controls, others } = controlsIn(site, kiln);
    return definePage({
      path,
      component: KilnPage,
      props: () => ({
        frame,
        kiln,
        firings,
        turn,
        kinds: [...new Set(own.map(({ kind }) => kind))],
        controls,
        otherControls: others,
      }),
      search: (props) => ({
        title: props.kiln.name,
        kind: "Kiln",
        words: kilnSentence(props.kiln),
        picture: null,
      }),
    });
  });
}
