/**
 * The machine failed, not the archive: a disk, a permission, a network share that went away. The
 * command line turns it into its own exit code.
 */
export class MachineError extends Error {
  override readonly name = "MachineError";

  /**
   * @param doing what was being done, for the message: `read tiles/TB-014.md`
   * @param cause what the system said
   */
  constructor(doing: string, cause: unknown) {
    super(`Could not ${doing}: ${describeCause(cause)}`, { cause });
  }
}

const meanings: Readonly<Record<string, string>> = {
  EACCES: "this user has no permission",
  EIO: "the disk reports an error",
  EMFILE: "too many files are open at once",
  ENOENT: "it is gone",
  ENOSPC: "the disk is full",
  EPERM: "this user has no permission",
  EROFS: "the disk can only be read",
};

function describeCause(cause: unknown): string {
  const code = errorCode(cause);
  const meaning = code === undefined ? undefined : meanings[code];
  if (meaning) return `${meaning} (${code})`;
  return cause instanceof Error ? cause.message : String(cause);
}

/** The system's code of a failure, such as `ENOENT`. */
export function errorCode(cause: unknown): string | undefined {
  if (!(cause instanceof Error) || !("code" in cause)) return undefined;
  return typeof cause.code === "string" ? cause.code : undefined;
}

/** Does something with files; a failure of the system becomes a `MachineError`. */
export function onMachine<T>(doing: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    throw new MachineError(doing, cause);
  }
}
