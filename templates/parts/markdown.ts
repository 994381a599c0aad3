/**
 * Contributors' notes as HTML. Their words are data: raw HTML is shown as text, no template in
 * them is run, pictures are not loaded, and only links of the web and of mail are links.
 */
import MarkdownIt from "markdown-it";

const notes = new MarkdownIt("default", { html: false, linkify: false, typographer: false });
notes.disable("image");
notes.validateLink = isLinkOfTheWeb;
notes.renderer.rules.link_open = (tokens, index, options, _env, renderer) => {
  tokens[index]?.attrSet("rel", "nofollow noopener");
  return renderer.renderToken(tokens, index, options);
};

/** A page has its own headings: those of a note stand below them. */
notes.core.ruler.push("lower-headings", ({ tokens }) => {
  for (const token of tokens) {
    if (token.type === "heading_open" || token.type === "heading_close") {
      token.tag = `h${Math.min(6, Number(token.tag.slice(1)) + 2)}`;
    }
  }
});

/** Whether an address in a note may be a link: whole, and of the web or of mail. */
export function isLinkOfTheWeb(address: string): boolean {
  return /^(https?:\/\/|mailto:)[^\s]/iu.test(address.trim());
}

/**
 * What a note begins with, without its marks and what is struck out: its first paragraph, or as much of it as there is room
 * for.
 *
 * @param most letters; what is cut off ends in an ellipsis
 */
export function firstWords(markdown: string, most: number): string {
  const first = notes.parse(markdown, {}).find(({ type, content }) => type === "inline" && content);
  const text = withoutStruck(first?.children ?? [])
    .map(({ type, content }) => (type.endsWith("break") ? " " : content))
    .join("")
    .trim();
  if (text.length <= most) return text;
  const gap = text.lastIndexOf(" ", most);
  return `${text.slice(0, gap > 0 ? gap : most).trimEnd()}…`;
}

/** What somebody struck out is not quoted as if it were meant. */
function withoutStruck<T extends { readonly type: string }>(tokens: readonly T[]): readonly T[] {
  let depth = 0;
  return tokens.filter(({ type }) => {
    if (type === "s_open") depth += 1;
    if (type === "s_close") depth -= 1;
    return depth === 0;
  });
}

/**
 * Renders what stands below a record's front matter.
 *
 * @returns HTML that is safe to put on a page as it is
 */
export function renderNotes(markdown: string): string {
  return notes.render(markdown);
}
