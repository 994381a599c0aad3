/**
 * The pages of a forge, by the address of a repository on it: where its own documents or maintainers
 * tell of an address, or common practice does, it is said beside it.
 */

/** Where the pages of a repository lie: what follows its own address, and what a page is filled in with. */
interface Forge {
  /** The page for a new file, whose name and text can be filled in; null where they cannot. */
  readonly newFile: { readonly page: string; readonly name: string; readonly text: string } | null;
}

/** That `HEAD` means the branch that is shown first is from memory. */
const forges: Readonly<Record<string, Forge>> = {
  "codeberg.org": { newFile: { page: "_new/main", name: "filename", text: "value" } },
  "github.com": { newFile: { page: "new/HEAD", name: "filename", text: "value" } },
};

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

/** The forge of a repository, and the repository's address without what may follow it. */
function onForge(repository: string): { readonly root: string; readonly forge: Forge } | undefined {
  if (!URL.canParse(repository)) return undefined;
  const { protocol, hostname, pathname } = new URL(repository);
  const forge = forges[hostname.replace(/^www\./u, "")];
  const [, owner, name] = /^\/([^/]+)\/([^/]+?)(?:\.git)?\/?$/u.exec(pathname) ?? [];
  if (protocol !== "https:" || forge === undefined || !owner || !name) return undefined;
  return { root: `https://${hostname}/${owner}/${name}`, forge };
}
