import type { Frame } from "../parts/frame.ts";

/**
 * The address of a page or a picture of the site: whole where the studio says where it is published,
 * else relative to the page, as linked data in a page may have it.
 *
 * @param url relative to the root
 */
export function addressOf({ site, root }: Pick<Frame, "site" | "root">, url: string): string {
  return (site ?? root) + url;
}
