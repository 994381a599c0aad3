/**
 * How a page's address is shown where somebody shares it, by the Open Graph protocol (ogp.me): its
 * title, what it is, and its picture. All addresses in it are whole, so a site without one has no card.
 */
import type { VNode } from "preact";
import type { Frame } from "./frame.ts";
import type { LeadPicture } from "./lead-picture.ts";

export interface SocialCardProps {
  readonly frame: Frame;
  readonly title: string;
  readonly summary: string;
  readonly picture: LeadPicture | null;
}

export function SocialCard({ frame, title, summary, picture }: SocialCardProps): VNode | null {
  const { canonical, unlisted, studio, path, site } = frame;
  if (canonical === null || site === null || unlisted) return null;
  return (
    <>
      <meta property="og:title" content={title} />
      <meta property="og:description" content={summary} />
      <meta property="og:type" content={path === "index.html" ? "website" : "article"} />
      <meta property="og:url" content={canonical} />
      <meta property="og:site_name" content={studio} />
      {picture && <CardPicture site={site} picture={picture} />}
    </>
  );
}

/** Without the last line some show the picture as a small square, cut from its middle. */
function CardPicture({ site, picture }: { readonly site: string; readonly picture: LeadPicture }) {
  const { url, width, height, alt } = picture;
  return (
    <>
      <meta property="og:image" content={site + url} />
      <meta property="og:image:width" content={String(width)} />
      <meta property="og:image:height" content={String(height)} />
      <meta property="og:image:alt" content={alt} />
      <meta name="twitter:card" content="summary_large_image" />
    </>
  );
}
