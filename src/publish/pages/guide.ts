/** The pages of the guide. */
import { GuideIndexPage, GuidePage, guideUrl } from "../../../templates/pages/guide-page.tsx";
import { readGuide } from "../guide.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";

export function guidePages({ frame }: Site): readonly Page[] {
  const guide = readGuide();
  const index = guideUrl("index");
  return [
    definePage({
      path: index,
      component: GuideIndexPage,
      props: () => ({ frame: frame(index), guide: guide.map(toLine) }),
      search: null,
    }),
    ...guide.map((entry) =>
      definePage({
        path: guideUrl(entry.stem),
        component: GuidePage,
        props: () => ({ frame: frame(guideUrl(entry.stem)), entry, guide: guide.map(toLine) }),
        search: ({ entry: { title, words } }) => ({ title, kind: "Page", words, picture: null }),
      }),
    ),
  ];
}

function toLine({ stem, audience, title }: ReturnType<typeof readGuide>[number]) {
  return { stem, audience, title };
}
