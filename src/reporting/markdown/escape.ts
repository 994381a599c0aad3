/**
 * Contributors' words on their way into Markdown that a forge renders. There they could become links,
 * pictures, headings or HTML, call people by name, lead to other requests, or turn letters around. So
 * every sign that Markdown or HTML would obey is written as what it is, and a space of no width keeps
 * apart what a forge would make a link of on its own.
 *
 * What forges link by themselves: https://github.github.com/gfm/#autolinks-extension- and
 * https://docs.gitlab.com/user/markdown/#gitlab-specific-references
 */
import { makeVisible } from "../visible.ts";

/** A space of no width: nobody sees it, and no forge reads over it. */
const apart = "\u200b";

/** The thinnest space there is: programs for mail read an address over one of no width. */
const gap = "\u200a";

/** Signs that are seen by nobody and are no letters; those that join letters stay. */
const unseen = /(?![\u200c\u200d])[\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]/gu;

/** One line of text as Markdown: it reads as it was written, anywhere in a line and in a table. */
export function escapeWords(text: string): string {
  const line = makeVisible(text.replace(/\s+/gu, " ")).replace(unseen, "\ufffd");
  return keepApart(line).replace(/[\\`*_{}[\]|~&<>$#]/gu, (sign) => escapes[sign] ?? `\\${sign}`);
}

const escapes: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  // Between two of them a forge sets formulas; so its documents say to write one that is none.
  $: "<span>$</span>",
};

/** People, other requests, addresses, commits and smileys are left as the letters that they are. */
function keepApart(line: string): string {
  return line
    .replace(/@(?=\S)/gu, `@${gap}`)
    .replace(/[#!~%^](?=[\p{L}\p{N}_"'“])/gu, `$&${apart}`)
    .replace(/[&$](?=[\p{L}\p{N}_"'“])/gu, `$&${apart}`)
    .replace(/:(?=[\p{L}\p{N}/_+-])/gu, `:${apart}`)
    .replace(/(?<=\b(?:mailto|xmpp|tel|data|javascript)):/giu, `:${apart}`)
    .replace(/(?<=[\p{L}\p{N}])\.(?=\p{L})/gu, `.${apart}`)
    .replace(/\b([0-9a-f]{6})(?=[0-9a-f])/giu, `$1${apart}`)
    .replace(/\b(?:GH|gh)(?=-\d)/gu, `$&${apart}`);
}

/** A line of Markdown that begins with somebody's words: what would make it a list or a rule is a letter. */
export function beginLine(markdown: string): string {
  return markdown.replace(/^[-+=]/u, "\\$&").replace(/^(\d{1,9})([.)])/u, "$1\\$2");
}

/** Words set in bold; where two stars would not do, since the words end in another sign, by a tag. */
export function escapeStrong(text: string): string {
  const words = escapeWords(text.trim());
  if (/^[\p{L}\p{N}](?:.*[\p{L}\p{N}])?$/u.test(words)) return `**${words}**`;
  return `<strong>${words}</strong>`;
}

/** The text as it stands, in a span of code: nothing in there is obeyed. */
export function escapeCode(text: string): string {
  const line = makeVisible(text).replace(unseen, "\ufffd");
  const shown = line.length > longestCode ? shorten(line) : line;
  const runs = shown.match(/`+/gu) ?? [];
  const fence = "`".repeat(Math.max(0, ...runs.map(({ length }) => length)) + 1);
  const space = /^`|`$|^ .* $/u.test(shown) ? " " : "";
  return `${fence}${space}${shown}${space}${fence}`;
}

/** A name longer than this is not read anyway: its beginning, its end and its length are. */
const longestCode = 160;

function shorten(line: string): string {
  return `${line.slice(0, 70)}… (${line.length} letters) …${line.slice(-70)}`;
}

/** Text as the value of an attribute of HTML. */
export function escapeAttribute(text: string): string {
  return makeVisible(text.replace(/\s+/gu, " "))
    .replace(unseen, "\ufffd")
    .replace(/[&<>"'`]/gu, (sign) => `&#${sign.charCodeAt(0)};`);
}
