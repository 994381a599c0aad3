/** What a request does to an archive: facts, which `templates/words/changes/` makes sentences of. */
import type { Apart, Beside } from "../catalogue/apart.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import type { Caution } from "../chemistry/cautions/cautions.ts";
import type { GlazeChemistry } from "../chemistry/glazes.ts";
import type { KindOfRecord } from "../reader/found-files.ts";
import type { LocatedProblem } from "../reader/locate.ts";
import type { PictureRole, Tile } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";

/** A file that differs; relative to the repository or to the archive, as whoever asks says. */
export interface FileChange {
  readonly file: string;
  readonly what: "added" | "changed" | "gone" | "renamed";
  /** Where a renamed file was before; null for any other. */
  readonly from: string | null;
  /** False for one that nobody told git of. */
  readonly inGit: boolean;
}

/** A field that is otherwise than before, with what was read of it. */
export interface FieldChange {
  /** As it is written in the record; `notes` for the words below. */
  readonly field: string;
  readonly before: unknown;
  readonly after: unknown;
  /** True where what it holds is never told: makers' codes, links of unlisted sets. */
  readonly isPrivate: boolean;
}

export interface PictureChange {
  /** Relative to the archive. */
  readonly file: string;
  readonly role: PictureRole;
  /** Whether browsers show a file of its kind. */
  readonly isShown: boolean;
  /** Null for one that is as it was. */
  readonly what: FileChange["what"] | null;
}

export interface TileApart extends Apart, Omit<Beside, "deltaE00"> {}

export interface TileChange {
  readonly what: "added" | "changed";
  readonly tile: CatalogueTile;
  readonly source: Tile;
  /** As it was before; null for a new one, and for one that could not be read before. */
  readonly was: { readonly tile: CatalogueTile; readonly source: Tile } | null;
  /** True where a new file has the old code as `formerly`, or the code is the same. */
  readonly keepsCode: boolean;
  readonly pictures: readonly PictureChange[];
  /** Of a new one, all that it has. */
  readonly fields: readonly FieldChange[];
  readonly apart: readonly TileApart[];
}

/** A glaze before or after. */
export interface GlazeSide {
  readonly record: GlazeRecord;
  readonly chemistry: GlazeChemistry | null;
  /** Null where it has chemistry, and for a bought one, of which nobody expects it. */
  readonly whyNot: string | null;
}

export interface GlazeChange {
  readonly what: "added" | "changed";
  readonly id: string;
  readonly file: string;
  readonly was: GlazeSide | null;
  readonly now: GlazeSide;
  readonly fields: readonly FieldChange[];
  /** True where what it is made of is otherwise. */
  readonly isOtherRecipe: boolean;
  /** Records that it is mixed from and that the request changes. */
  readonly through: readonly string[];
  readonly came: readonly Caution[];
  readonly went: readonly Caution[];
  /** Cautions that it had and has, or that it has as a new one. */
  readonly cautions: readonly Caution[];
  /** The tiles that were there before, by their codes, with all it is blended into. */
  readonly tiles: readonly string[];
}

/** A record of another kind that is new or otherwise. */
export interface RecordChange {
  readonly what: "added" | "changed";
  readonly kind: Exclude<KindOfRecord, "glaze" | "tile"> | "studio";
  readonly id: string;
  readonly file: string;
  readonly name: string;
  readonly fields: readonly FieldChange[];
  /** The tiles that have to do with it, by their codes. */
  readonly tiles: readonly string[];
  /** The glazes that hold it, by their names: of a material. */
  readonly glazes: readonly string[];
}

export interface GoneRecord {
  readonly kind: KindOfRecord;
  readonly id: string;
  readonly file: string;
}

/** A code of this request that an earlier one claims. */
export interface ClaimedCode {
  readonly code: string;
  readonly request: string;
  /** The next code that nobody has; null where none was found. */
  readonly next: string | null;
}

/** A problem, with words only where they name nobody. */
export interface ToldProblem extends Pick<LocatedProblem, "code" | "file" | "line" | "severity"> {
  readonly message: string | null;
  readonly hint: string;
}

export interface CheckFacts {
  readonly errors: readonly ToldProblem[];
  /** Warnings of the request's own. */
  readonly warnings: readonly ToldProblem[];
  /** How many errors were there before it, in files it does not change: they are among `errors`. */
  readonly olderErrors: number;
  readonly olderWarnings: number;
}

/** A record of which nothing is told, since it or what it rests on has errors. */
export interface UntoldRecord {
  readonly id: string;
  readonly file: string;
  /** The kind and id of what it waits for; null where its own errors are the reason. */
  readonly because: { readonly kind: KindOfRecord; readonly id: string } | null;
}

/** What everybody would see, and did not see before. */
export interface Exposed {
  /** How many makers would be named, or named otherwise, who were not before. */
  readonly makers: number;
  /** Names of sets that were reached only by their link. */
  readonly sets: readonly string[];
}

export interface Changes {
  /** Files outside the archive; relative to the repository. */
  readonly outside: readonly (FileChange & { readonly mayRun: boolean })[];
  readonly exposed: Exposed;
  readonly check: CheckFacts;
  readonly claimed: readonly ClaimedCode[];
  readonly untold: readonly UntoldRecord[];
  /** In the order of their codes. */
  readonly tiles: readonly TileChange[];
  /** In the order of their names. */
  readonly glazes: readonly GlazeChange[];
  readonly records: readonly RecordChange[];
  readonly gone: readonly GoneRecord[];
  /** Tiles that are otherwise only by what their set, their firing or the studio says. */
  readonly besides: readonly string[];
  /** Files of the archive that differ and of which nothing else is told: they read as before, belong to no record, or to one that could not be read before either. */
  readonly rest: readonly FileChange[];
}
