/** What the foot of a record's page is given. */
import type { RecordFootProps } from "../../../templates/parts/record-foot.tsx";
import { reportTitle } from "../../../templates/words/site/record.ts";
import { filePages, reportAddress } from "../../terms/forges.ts";
import type { Site } from "./site.ts";

/**
 * The foot of a record's page; null on a site of one set alone, which leads to no repository and says
 * nothing of who wrote in it and when.
 *
 * @param url of its page
 * @param about what a report calls it: a code, or a name
 */
export function recordFoot(
  { catalogue }: Site,
  url: string,
  about: string,
): RecordFootProps | null {
  const { studio, records } = catalogue;
  if (studio.alone) return null;
  const known = records.get(url);
  const { repository } = studio;
  const pages = repository && known?.path ? filePages(repository, known.path) : undefined;
  const report = repository && reportAddress(repository, { title: reportTitle(about), about });
  return {
    dates: known
      ? { state: known.state, first: known.first, last: known.last, by: known.by }
      : null,
    ways: { ...pages, ...(report && { report }) },
  };
}
