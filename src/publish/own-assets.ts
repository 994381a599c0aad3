/** What of a site's styles and pictures is the studio's own. */
import type { SiteRequest } from "./site-request.ts";

/**
 * The assets of a site with the studio's one colour, which all styles know by its name, so that no page
 * has to be made anew for it, and with its mark.
 *
 * @param assets of every site, by their paths beneath `assets/`
 */
export function withOwn(
  assets: ReadonlyMap<string, Uint8Array>,
  { catalogue: { own }, mark }: SiteRequest,
): ReadonlyMap<string, string | Uint8Array> {
  const colour = own.accent === null ? "" : `:root{--accent:${own.accent};--accent-line:2px}`;
  const all = [...assets].map(([name, content]): [string, string | Uint8Array] =>
    colour !== "" && name.endsWith(".css")
      ? [name, colour + new TextDecoder().decode(content)]
      : [name, content],
  );
  return new Map(mark && own.mark ? [...all, [own.mark.url.replace(/^assets\//u, ""), mark]] : all);
}
