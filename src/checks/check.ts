/**
 * What a check is. A rule finds what breaks it and says where; whoever runs it adds its name and
 * severity and makes problems of it.
 */
import type { FiringHeat } from "../firing/of-record.ts";
import type { Archive, Filed, Firing, Tile } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import type { MaterialRecord } from "../records/material.ts";
import type { Mend } from "../records/mend.ts";
import type { FieldPath, Problem, Severity, WordPlace } from "../records/problem.ts";
import type { SetRecord } from "../records/set.ts";
import type { TypedCommand } from "../terms/typed-command.ts";

/** What practice notes rest on. */
export const commonPractice = "common practice, no published source";

export interface Check {
  /** The code of its problems, in kebab-case. */
  readonly name: string;
  /** One sentence that explains it to a potter. */
  readonly explains: string;
  readonly severity: Severity;
  /** What it rests on where potters' practice is all there is: then it is a practice note. */
  readonly source?: typeof commonPractice;
}

/** One place that breaks a rule. */
export interface Finding {
  /** The file, where it is not that of the record looked at. */
  readonly file?: string;
  readonly path: FieldPath;
  /** The line, from 1, in a file that has no fields. */
  readonly line?: number | undefined;
  /** The word that is wrong: see `Problem`. */
  readonly word?: WordPlace;
  readonly message: string;
  readonly hint: string;
  /** What puts it right without a guess, where anything does: `check --fix` carries it out. */
  readonly mend?: Mend;
}

/** What is wrong with a photograph, in words for whoever took it. */
export interface PictureFault {
  readonly message: string;
  readonly hint: string;
}

/** What its maker can do better next time: the code of the check that says so. */
export interface PictureWarning extends PictureFault {
  readonly code: string;
}

/**
 * What was found by looking at a photograph: a fault, or what it gives away, and where it was
 * opened how it was taken.
 */
export type PictureInspection =
  | { readonly fault: PictureFault }
  | {
      readonly facts: { readonly traces: readonly string[] };
      readonly warnings?: readonly PictureWarning[];
    };

/** What other rooms found out about an archive. */
export interface Extra {
  /** By the picture's file, relative to the archive; `place` among the traces is a GPS place. */
  readonly pictures: ReadonlyMap<string, PictureInspection>;
  /** By `idKey` of the glaze: why it has no chemistry. */
  readonly withoutChemistry: ReadonlyMap<string, string>;
  /** By `idKey` of the firing: what it amounts to. */
  readonly heats: ReadonlyMap<string, FiringHeat>;
  /** Gives a command of Tilebook as the reader can type it. */
  readonly asTyped: TypedCommand;
}

/** A rule about each record of one kind. */
interface RuleOf<Kind extends string, R> extends Check {
  readonly of: Kind;
  readonly find: (archive: Archive, record: R, extra: Extra) => readonly Finding[];
}

export type TileRule = RuleOf<"tile", Tile>;
export type GlazeRule = RuleOf<"glaze", Filed<GlazeRecord>>;
export type FiringRule = RuleOf<"firing", Firing>;
export type MaterialRule = RuleOf<"material", Filed<MaterialRecord>>;
export type SetRule = RuleOf<"set", Filed<SetRecord>>;

/** A rule about the archive as a whole. */
export interface ArchiveRule extends Check {
  readonly of: "archive";
  readonly find: (
    archive: Archive,
    extra: Extra,
  ) => readonly (Finding & { readonly file: string })[];
}

export type Rule = TileRule | GlazeRule | MaterialRule | FiringRule | SetRule | ArchiveRule;

/**
 * A finding as a problem; one that rests on practice alone says so.
 *
 * @param file the file of the record looked at
 */
export function toProblem(check: Check, finding: Finding, file: string): Problem {
  const { message, hint, path, line, mend, word } = finding;
  return {
    file: finding.file ?? file,
    path,
    severity: check.severity,
    code: check.name,
    message,
    hint: check.source === undefined ? hint : `${hint} (${sentence(check.source)})`,
    ...(line === undefined ? {} : { at: { line, column: 1 } }),
    ...(mend === undefined ? {} : { mend }),
    ...(word === undefined ? {} : { word }),
  };
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
