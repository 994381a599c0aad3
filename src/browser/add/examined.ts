/** What the form asks of the script that reads and checks, which is loaded once the form is there. */
import type { FormSite } from "../../publish/add-file.ts";
import type { FieldPath, Severity } from "../../records/problem.ts";
import type { Draft } from "./draft.ts";

/** Something that the build would tell of the record. */
export interface FormFinding {
  readonly severity: Severity;
  readonly code: string;
  /** The field in the record: `["layers", 2, "coats"]`. */
  readonly path: FieldPath;
  readonly message: string;
  readonly hint: string;
}

export interface Examined {
  /** The record's file. */
  readonly text: string;
  readonly findings: readonly FormFinding[];
}

/** Writes the record of a draft, and tells of it what the build would. */
export type Examine = (draft: Draft, site: FormSite) => Examined;

/** Where the script leaves what it can do. */
export interface ChecksLoaded {
  tilebookExamine?: Examine;
}
