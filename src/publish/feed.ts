/** The feed of the newest results, as Atom (RFC 4287). */
import { leadPictureOf } from "../../templates/parts/lead-picture.ts";
import { firingsOf } from "../catalogue/kilns/tile-firings.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import type { Catalogue } from "../catalogue/types.ts";
import type { DataFile } from "./data/entry.ts";
import { escapeXml, rootOf } from "./xml.ts";

const longest = 30;

/** Where the feed lies, relative to the root of the site. */
export const feedPath = "feed.xml";

/** `feed.xml`; nothing where the studio has no address, which a feed must hold. */
export function makeFeed({ studio, tiles }: Catalogue): readonly DataFile[] {
  if (studio.address === null) return [];
  const root = rootOf(studio.address);
  const newest = tiles
    .flatMap((tile) => {
      const day = lastDay(tile);
      return day === undefined || tile.results.length === 0 ? [] : [{ tile, day }];
    })
    .sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0))
    .slice(0, longest);
  const content = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom">',
    `  <title>${escapeXml(studio.name)}</title>`,
    `  <id>${escapeXml(root)}</id>`,
    `  <link href="${escapeXml(root)}"/>`,
    `  <link rel="self" href="${escapeXml(`${root}${feedPath}`)}"/>`,
    `  <author><name>${escapeXml(studio.name)}</name></author>`,
    `  <updated>${newest[0]?.day ?? "1970-01-01"}T00:00:00Z</updated>`,
    ...newest.map(({ tile, day }) => renderEntry(tile, day, root)),
    "</feed>",
    "",
  ].join("\n");
  return [{ path: feedPath, content }];
}

/** The day of the last firing that has one. */
function lastDay({ steps }: CatalogueTile): string | undefined {
  return firingsOf(steps)
    .flatMap((firing) => firing.on ?? [])
    .sort()
    .at(-1);
}

function renderEntry(tile: CatalogueTile, day: string, root: string): string {
  const address = escapeXml(new URL(tile.url, root).href);
  const glazes = Object.values(tile.glazes).map((glaze) => glaze.name);
  const told = [glazes.join(", "), tile.cone && `cone ${tile.cone}`, tile.surface.join(" and ")];
  return [
    "  <entry>",
    `    <title>${escapeXml(tile.id)}</title>`,
    `    <id>${address}</id>`,
    `    <link href="${address}"/>`,
    `    <updated>${day}T00:00:00Z</updated>`,
    `    <summary>${escapeXml(told.filter(Boolean).join("; "))}</summary>`,
    ...pictureOf(tile, root),
    "  </entry>",
  ].join("\n");
}

/** What an entry shows where a reader shows more than its summary: the photograph, as HTML. */
function pictureOf(tile: CatalogueTile, root: string): readonly string[] {
  const picture = leadPictureOf(tile);
  if (!picture) return [];
  const { url, alt, width, height } = picture;
  const html = `<p><img src="${escapeXml(root + url)}" alt="${escapeXml(alt)}" width="${width}" height="${height}"/></p>`;
  return [`    <content type="html">${escapeXml(html)}</content>`];
}
