/** Where the photographs of a request can be seen: on the forge, at the commit that is looked at. */
import { changedFiles } from "../../git/changed-files.ts";
import { filesAtCommit } from "../../terms/forges.ts";
import type { Request } from "../examine/request.ts";
import { WrongUsage } from "../failure.ts";

/**
 * Makes the function that gives the address of a picture by its file in the archive; null for one
 * that no commit has yet, and for all of them where nobody says where they are.
 *
 * @param given where the repository's files can be read
 * @param repository the studio's own, of which a forge is known
 */
export async function pictureAddresses(
  { repository: { dir, head, isShallow, prefix } }: Request,
  given: PicturesRoot | undefined,
  repository: string | undefined,
): Promise<(file: string) => string | null> {
  if (given !== undefined) return (file) => addressIn(given, prefix + file);
  const root = head === null ? undefined : filesAtCommit(repository, head);
  if (root === undefined || head === null) return () => null;
  const unsaved = await changedFiles({ dir, head, isShallow, prefix }, head);
  const waiting = new Set(unsaved.ok ? unsaved.files.map(({ file }) => file) : []);
  return (file) => (waiting.has(prefix + file) ? null : addressIn(root, prefix + file));
}

/** The address under which the repository's files can be read, with `/` at its end. */
export type PicturesRoot = string & { readonly isPicturesRoot: true };

/** @throws WrongUsage for what is no such address */
export function picturesRoot(given: string): PicturesRoot {
  const isWeb = URL.canParse(given) && /^https?:$/u.test(new URL(given).protocol);
  if (isWeb && given.endsWith("/")) return given as PicturesRoot;
  throw new WrongUsage(
    `--pictures is the web address of the repository's files, with “/” at its end; “${given}” is none.`,
  );
}

function addressIn(root: string, file: string): string {
  return root + file.split("/").map(encodeURIComponent).join("/");
}
