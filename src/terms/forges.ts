/**
 * The pages of a forge, by the address of a repository on it: where its own documents or maintainers
 * tell of an address, or common practice does, it is said beside it.
 */

/** Where the pages of a repository lie: what follows its own address, and what a page is filled in with. */
interface Forge {
  /** The page for a new file, whose name and text can be filled in; null where they cannot. */
  readonly newFile: { readonly page: string; readonly name: string; readonly text: string } | null;
  /** What the path of a file follows: where it can be edited, and where its commits are listed. */
  readonly edit: string;
  readonly commits: string;
  /** What the page of a new report is filled in with. */
  readonly report: (told: Report) => Readonly<Record<string, string>>;
  readonly newReport: string;
  /** What leads to a file's own bytes at a commit, before the commit's name; from memory. */
  readonly bytes: string;
}

/** What somebody who saw that something is wrong begins with. */
export interface Report {
  readonly title: string;
  /** The code or the name of what it is about. */
  readonly about: string;
}

/**
 * `HEAD` means the branch that is shown first. For new files and lists of commits that is from memory;
 * pages to edit a file are addressed so by npm's hosted-git-info, for GitHub and GitLab both. Reports:
 * GitHub's “Creating an issue from a URL query” (`template`, `title`, and since 2023 the fields of a form
 * by their ids); GitLab's “Using a URL with prefilled values” (`issue[title]`, `issue[description]`).
 * Codeberg's are those of Forgejo, all from memory; that its first branch is `main` is its default.
 */
const forges: Readonly<Record<string, Forge>> = {
  "codeberg.org": {
    newFile: { page: "_new/main", name: "filename", text: "value" },
    edit: "_edit/main",
    bytes: "raw/commit",
    commits: "commits/branch/main",
    newReport: "issues/new",
    report: ({ title, about }) => ({
      template: `.github/ISSUE_TEMPLATE/${reportForm}`,
      title,
      "field:tile": about,
    }),
  },
  "github.com": {
    newFile: { page: "new/HEAD", name: "filename", text: "value" },
    edit: "edit/HEAD",
    bytes: "raw",
    commits: "commits/HEAD",
    newReport: "issues/new",
    report: ({ title, about }) => ({ template: reportForm, title, tile: about }),
  },
  "gitlab.com": {
    newFile: null,
    edit: "-/edit/HEAD",
    bytes: "-/raw",
    commits: "-/commits/HEAD",
    newReport: "-/issues/new",
    report: ({ title, about }) => ({ "issue[title]": title, "issue[description]": `${about}: ` }),
  },
};

/** The form of an archive for “something is wrong with a tile”. */
const reportForm = "wrong-tile.yml";

/** Forges refuse longer ones; 8,192 bytes are common practice among web servers, no published source. */
const longestAddress = 8000;

/**
 * The address of the repository's page for a new file, filled in; `too-long` where no forge would take
 * it, undefined for a repository whose pages cannot be filled in.
 *
 * @param repository its web address
 * @param file its path in the repository
 */
export function newFileAddress(
  repository: string | undefined,
  file: string,
  text: string,
): string | "too-long" | undefined {
  const found = repository === undefined ? undefined : onForge(repository);
  if (!found?.forge.newFile) return undefined;
  const { page, name, text: field } = found.forge.newFile;
  const address = `${found.root}/${page}?${new URLSearchParams({ [name]: file, [field]: text })}`;
  return address.length > longestAddress ? "too-long" : address;
}

/** Where the requests to a repository are listed; undefined for one whose new files cannot be filled in. */
export function requestsAddress(repository: string | undefined): string | undefined {
  const found = repository === undefined ? undefined : onForge(repository);
  return found?.forge.newFile ? `${found.root}/pulls` : undefined;
}

/** The pages of a file on its forge. */
export interface FilePages {
  readonly edit: string;
  readonly commits: string;
}

/**
 * Where a file can be edited, and where its changes are listed; undefined for a repository of no known forge.
 *
 * @param path from the top of the repository
 */
export function filePages(repository: string, path: string): FilePages | undefined {
  const found = onForge(repository);
  if (!found) return undefined;
  const { root, forge } = found;
  const file = path.split("/").map(encodeURIComponent).join("/");
  return { edit: `${root}/${forge.edit}/${file}`, commits: `${root}/${forge.commits}/${file}` };
}

/** The page for a new report, filled in; undefined for a repository of no known forge. */
export function reportAddress(repository: string, told: Report): string | undefined {
  const found = onForge(repository);
  if (!found) return undefined;
  const { root, forge } = found;
  return `${root}/${forge.newReport}?${new URLSearchParams(forge.report(told))}`;
}

/**
 * The address under which the files of a repository can be read as they are at a commit, with `/` at
 * its end; undefined where the forge is not known.
 *
 * @param commit its full name
 */
export function filesAtCommit(repository: string | undefined, commit: string): string | undefined {
  const found = repository === undefined ? undefined : onForge(repository);
  return found && `${found.root}/${found.forge.bytes}/${commit}/`;
}

/** The forge of a repository, and the repository's address without what may follow it. */
function onForge(repository: string): { readonly root: string; readonly forge: Forge } | undefined {
  if (!URL.canParse(repository)) return undefined;
  const { protocol, hostname, pathname } = new URL(repository);
  const forge = forges[hostname.replace(/^www\./u, "")];
  const names = pathname
    .replace(/\/$/u, "")
    .replace(/\.git$/u, "")
    .split("/")
    .slice(1);
  if (protocol !== "https:" || forge === undefined || names.some((name) => name === ""))
    return undefined;
  // On GitLab a group may be in a group; `-` is where a repository's own pages begin.
  const isRepository = forge === forges["gitlab.com"] ? names.length >= 2 : names.length === 2;
  if (!isRepository || names.includes("-")) return undefined;
  return { root: `https://${hostname}/${names.join("/")}`, forge };
}
