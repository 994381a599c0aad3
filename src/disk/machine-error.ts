/**
 * The machine failed, not the archive: a disk, a permission, a network share that went away. The
 * command line gives it an exit code of its own.
 */
export class MachineError extends Error {
  override readonly name = "MachineError";
  /** The system's code of the failure, such as `EACCES`, where it gave one. */
  readonly code: string | undefined;

  /**
   * @param doing what was being done: `read`
   * @param path the file or folder it was done to
   * @param cause what the system said
   */
  constructor(
    doing: string,
    readonly path: string,
    cause: unknown,
  ) {
    const said = cause instanceof Error ? cause.message : String(cause);
    super(`Could not ${doing} ${path}: ${said}`, { cause });
    this.code = errorCode(cause);
  }
}

/** The system's code of a failure, such as `ENOENT`. */
export function errorCode(cause: unknown): string | undefined {
  if (!(cause instanceof Error) || !("code" in cause)) return undefined;
  return typeof cause.code === "string" ? cause.code : undefined;
}

/** Whether the system failed for one of these reasons. */
export function hasCode(cause: unknown, ...codes: readonly string[]): boolean {
  const code = errorCode(cause);
  return code !== undefined && codes.includes(code);
}

/** Does something to a file or folder; a failure of the system becomes a `MachineError`. */
export function onMachine<T>(doing: string, path: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    throw new MachineError(doing, path, cause);
  }
}
