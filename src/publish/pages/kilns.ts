/** A page for each kiln. */
import { KilnPage } from "../../../templates/pages/kiln-page.tsx";
import { kilnSentence } from "../../../templates/words/firing/kiln.ts";
import type { CatalogueKiln } from "../../catalogue/kilns/kilns.ts";
import { definePage, type Page } from "../page.ts";
import { controlsIn } from "./controls.ts";
import type { Site } from "./site.ts";

export function kilnPages(site: Site): readonly Page[] {
  return site.catalogue.kilns.map((kiln) => kilnPage(site, kiln));
}

function kilnPage(site: Site, kiln: CatalogueKiln): Page {
  return definePage({
    path: kiln.url,
    component: KilnPage,
    props: {
      frame: site.frame(kiln.url),
      kiln,
      firings: site.catalogue.firings.filter((firing) => firing.kiln?.id === kiln.id),
      controls: controlsIn(site, kiln),
    },
    search: (props) => ({
      title: props.kiln.name,
      kind: "Kiln",
      words: kilnSentence(props.kiln),
      picture: null,
    }),
  });
}
