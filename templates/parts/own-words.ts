/**
 * The studio's own words, its welcome and its pages, as HTML. They are data as contributors' notes are:
 * raw HTML is shown as text, and pictures are not loaded. Links lead to the web, to mail, and from one
 * page of the studio to another by its file's name.
 */
import MarkdownIt, { type Token } from "markdown-it";
import { pageUrl } from "../../src/catalogue/addresses.ts";
import { idKey } from "../../src/terms/ids.ts";
import type { Frame } from "./frame.ts";
import { isLinkOfTheWeb } from "./markdown.ts";

const ownPage = /^(?:\.\/)?([^/\\#?:]+)\.md$/iu;

/** The page that a link names; undefined where it is no link to one. */
function pageNamed(address: string): string | undefined {
  return ownPage.exec(decoded(address))?.[1];
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}

/** Where words are shown. */
interface Place {
  /** The address that a link to another page leads to; undefined where there is no such page. */
  readonly addressOf: (page: string) => string | undefined;
  /** By how much their headings are lowered: those of words are below the page's own. */
  readonly lowered: number;
}

/** For each link that is open whether it leads anywhere. */
interface Rendering extends Place {
  readonly open: boolean[];
}

/** What `renderWords` handed over with the words. */
function renderingOf(env: unknown): Rendering {
  return env as Rendering;
}

const words = new MarkdownIt("default", { html: false, linkify: false, typographer: false });
words.disable("image");
words.validateLink = (address) => isLinkOfTheWeb(address) || pageNamed(address) !== undefined;
words.renderer.rules.link_open = (tokens, index, options, env, renderer) => {
  const link = tokens[index];
  const { addressOf, open } = renderingOf(env);
  const page = pageNamed(String(link?.attrGet("href") ?? ""));
  const address = page === undefined ? undefined : addressOf(page);
  const leads = page === undefined || address !== undefined;
  open.push(leads);
  if (!leads) return "";
  if (address === undefined) link?.attrSet("rel", "noopener");
  else link?.attrSet("href", address);
  return renderer.renderToken(tokens, index, options);
};
words.renderer.rules.link_close = (tokens, index, options, env, renderer) =>
  renderingOf(env).open.pop() === false ? "" : renderer.renderToken(tokens, index, options);

words.core.ruler.push("lower-headings", ({ tokens, env }) => {
  for (const token of tokens)
    if (token.type === "heading_open" || token.type === "heading_close")
      token.tag = `h${Math.min(6, Number(token.tag.slice(1)) + renderingOf(env).lowered)}`;
});

/**
 * Renders words of the studio: HTML that is safe to put on a page as it is. A link to a page that waits
 * to be mended is its words alone.
 *
 * @param pages those of the site
 */
export function renderOwnWords(
  markdown: string,
  { root, pages }: Pick<Frame, "root" | "pages">,
): string {
  return renderWords(markdown, {
    addressOf: (page) => {
      const url = pageUrl(page);
      return pages.some((known) => known.url === url) ? root + url : undefined;
    },
    lowered: 1,
  });
}

/**
 * Renders words in which a link may lead to another page by its file's name: HTML that is safe to put
 * on a page as it is. A link to a page that is not there is its words alone.
 */
export function renderWords(markdown: string, place: Place): string {
  const rendering: Rendering = { ...place, open: [] };
  return words.render(markdown, { ...rendering });
}

/** What in the studio's words would not work on a page. */
export interface UnusableInWords {
  readonly what: "link" | "picture";
  /** The address, as it is written. */
  readonly address: string;
}

/** Keeps the links and pictures that pages leave out, so that each can be reported. */
const all = new MarkdownIt("default", { html: false });
all.validateLink = () => true;
all.normalizeLink = (address) => address;

/**
 * Finds every picture, and every link that leads neither to the web nor to mail nor to a page there is.
 *
 * @param hasPage whether there is a page of an id, told its key
 */
export function findUnusable(
  markdown: string,
  hasPage: (key: string) => boolean,
): readonly UnusableInWords[] {
  return flatten(all.parse(markdown, {})).flatMap((token): readonly UnusableInWords[] => {
    if (token.type === "image")
      return [{ what: "picture", address: String(token.attrGet("src") ?? "") }];
    if (token.type !== "link_open") return [];
    const address = String(token.attrGet("href") ?? "");
    const page = pageNamed(address);
    const leads = page === undefined ? isLinkOfTheWeb(address) : hasPage(idKey(page));
    return leads ? [] : [{ what: "link", address }];
  });
}

function flatten(tokens: readonly Token[]): readonly Token[] {
  return tokens.flatMap((token) => [token, ...flatten(token.children ?? [])]);
}
