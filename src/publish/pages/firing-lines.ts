/** Firings as lists tell of them. */
import type { FiringLineProps } from "../../../templates/parts/firing-lines.tsx";
import { capital } from "../../../templates/words/english/numbers.ts";
import { storyHeading, witnessSummary } from "../../../templates/words/firing/story.ts";
import type { CatalogueFiring } from "../../catalogue/kilns/firings.ts";

export function toFiringLine(firing: CatalogueFiring): FiringLineProps {
  const { id, url, on, kind, kiln, cone, log, programme, story } = firing;
  return {
    id,
    url,
    on,
    kind,
    kiln: kiln?.name ?? null,
    cone,
    curve: log?.curve ?? programme?.curve ?? null,
    logged: log !== null,
    witnesses: witnessSummary(story),
    heading: capital(storyHeading(firing)),
    differs: story.agreement === "differs",
  };
}
