/** The way from the first page of a site to one of its pages. */
import type { BreadcrumbList } from "schema-dts";
import type { Frame } from "../parts/frame.ts";
import { type Section, sections } from "../parts/sections.ts";
import { addressOf } from "./addresses.ts";

/** A page on the way, or its end. */
interface Step {
  readonly name: string;
  readonly url: string;
}

/**
 * @param section the part of the site that the page belongs to, as the head of every page names them
 * @param name the page's own
 * @param within what the page is a part of, inside that section
 */
export function trailTo(
  frame: Frame,
  section: Section,
  name: string,
  within: Step | null = null,
): Exclude<BreadcrumbList, string> {
  const steps = [
    { name: frame.studio, url: "index.html" },
    ...sectionStep(section),
    ...(within ? [within] : []),
    { name, url: frame.path },
  ];
  return {
    "@type": "BreadcrumbList",
    itemListElement: steps.map(({ name: told, url }, i) => ({
      "@type": "ListItem",
      position: i + 1,
      name: told,
      item: addressOf(frame, url),
    })),
  };
}

/** The wall is the first page itself. */
function sectionStep(key: Section): readonly Step[] {
  return sections
    .filter((section) => section.key === key && section.key !== "wall")
    .map(({ name, address }) => ({ name, url: address }));
}
