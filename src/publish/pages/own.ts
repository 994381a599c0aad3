/** The studio's own pages. */
import { OwnPage } from "../../../templates/pages/own-page.tsx";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";

export function ownPages({ catalogue, frame }: Site): readonly Page[] {
  return catalogue.own.pages.map((page) =>
    definePage({
      path: page.url,
      component: OwnPage,
      props: () => ({ frame: frame(page.url), page }),
      search: ({ page: { title, words } }) => ({ title, kind: "Page", words, picture: null }),
    }),
  );
}
