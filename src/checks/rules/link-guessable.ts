import type { Archive, Filed } from "../../records/archive.ts";
import type { SetRecord } from "../../records/set.ts";
import type { SetRule } from "../check.ts";
import { writeLink } from "../write-link.ts";

export const linkGuessable: SetRule = {
  of: "set",
  name: "link-guessable",
  severity: "error",
  explains: "The link of an unlisted set holds no word of the set's or the studio's name.",
  find: (archive, set) => {
    const { link } = set.record;
    if (link === undefined) return [];
    const known = namesAround(archive, set).find((word) => bare(link).includes(word));
    if (known === undefined) return [];
    return [
      {
        path: ["link"],
        message: `The link holds “${known}”, which anyone who knows the set or the studio may think of`,
        hint: "Write a random link instead, and send the new address round.",
        mend: writeLink(set.file),
      },
    ];
  },
};

/** The words of four letters and more in the names of a set and its studio. */
function namesAround({ studio }: Archive, { id, record }: Filed<SetRecord>): readonly string[] {
  return [id, record.name, studio.studio]
    .flatMap((name) => name.split(/[^\p{L}\p{N}]+/u))
    .map(bare)
    .filter((word) => word.length >= 4);
}

/** Small letters without their marks and without signs between them. */
function bare(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .toLowerCase();
}
