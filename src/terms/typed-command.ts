/** A command as its reader can type it: pasted into a shell, it does what it says and nothing else. */

/** Where a command is typed. */
export interface Terminal {
  /** What starts this Tilebook there: `npx tilebook`. */
  readonly program: string;
  readonly shell: "posix" | "windows";
  /** The archive's folder as it was named; null for the one that the reader stands in. */
  readonly archive: string | null;
}

/**
 * Gives a command as it is typed.
 *
 * @param words the command and its options: `check --fix`
 * @param files what it is to work on. Where one of them has a name that no quotation marks keep
 *   whole in every shell of the system, none is named: then the command is for all there are
 */
export type TypedCommand = (words: string, files?: readonly string[]) => string;

/** Makes the function that gives commands as they are typed at a terminal. */
export function typedCommand({ program, shell, archive }: Terminal): TypedCommand {
  const folder = archive === null ? [] : ["--archive", quoteForShell(archive, shell) ?? "FOLDER"];
  return (words, files = []) => {
    const named = files.map((file) => quoteForShell(file, shell));
    const all = named.every((name) => name !== undefined) ? named : [];
    return [program, words, ...folder, ...all].join(" ");
  };
}

const needsNoQuotes = /^[\p{L}\p{N}_./][\p{L}\p{M}\p{N}_./-]*$/u;

/** What `cmd` and PowerShell both leave alone between double quotation marks. */
const safeOnWindows = /^[\p{L}\p{M}\p{N} \\:_./()[\]{}+,;=@#~&'-]+$/u;

/**
 * A word as a shell takes it for one word, letter by letter.
 *
 * @returns undefined where no quotation marks do that in every shell of the system
 */
export function quoteForShell(word: string, shell: Terminal["shell"]): string | undefined {
  if (needsNoQuotes.test(word)) return word;
  const whole = word.startsWith("-") ? `./${word}` : word;
  if (shell === "posix") return `'${whole.replaceAll("'", "'\\''")}'`;
  // A backslash at the end would take the mark that closes with it.
  return safeOnWindows.test(whole) && !whole.endsWith("\\") ? `"${whole}"` : undefined;
}
