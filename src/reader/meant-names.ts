/**
 * What a file was meant to be called. Phones, cameras, editors and file managers add to a name or
 * write it in their own way: `CL_02.JPG`, `cl-02 (1).jpeg`, `CL-02 copy.md`.
 */
import { findIdFault } from "../terms/ids.ts";

/** The words that file managers and picture editors add to a copy, in the languages of many. */
const copyWords = "copy|copie|copia|cópia|edited|kopia|kopie|kopio|kopi";

const copyMark = new RegExp(
  `(?:[\\s_-]*\\(\\d{1,3}\\)|[\\s_-]+\\(?(?:${copyWords})\\)?(?:[\\s_-]*\\d{1,2})?|~\\d{1,2})$`,
  "iu",
);

/** A stem without what marks it as a copy: `CL-02 (1)` → `CL-02`. */
export function withoutCopyMarks(stem: string): string {
  const mended = stem.trim().replace(copyMark, "");
  return mended === stem || mended === "" ? stem : withoutCopyMarks(mended);
}

/**
 * The form under which an id meets the ways it may have been typed: letters and digits alone, and a
 * sign kept only where it parts two numbers. `CL 02`, `cl_02` and `CL02` are one; `CL-1-2` and
 * `CL-12` are not.
 */
export function looseKey(id: string): string {
  return id
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, "-")
    .replace(/(?<!\p{N})-|-(?!\p{N})/gu, "");
}

/** The nearest id that may be used, in the same letters and digits; undefined where there is none. */
export function usableId(id: string): string | undefined {
  const mended = withoutCopyMarks(id)
    .replace(/[^\p{L}\p{M}\p{N}._-]+/gu, "-")
    .replace(/^[^\p{L}\p{N}]+|[.-]+$/gu, "");
  return mended === id || findIdFault(mended) !== undefined ? undefined : mended;
}
