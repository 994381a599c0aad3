/** How a command ends, and what is said when it fails for another reason than the archive. */
import { RefusedFolder } from "../publish/site-folder.ts";
import { StagingLost } from "../publish/staging.ts";

export const exitCodes = {
  done: 0,
  /** The archive has errors. */
  faulty: 1,
  /** Wrong usage. */
  usage: 2,
  /** The machine failed: disk, permission, a bug. */
  machine: 3,
} as const;

/** A command was given something that it cannot work with. */
export class WrongUsage extends Error {
  override readonly name = "WrongUsage";
}

/** Says on standard error what went wrong, and gives the exit code for it. */
export function tellFailure(error: unknown): number {
  console.error(describeFailure(error));
  return isWrongUsage(error) ? exitCodes.usage : exitCodes.machine;
}

function isWrongUsage(error: unknown): error is Error {
  return error instanceof RefusedFolder || error instanceof WrongUsage;
}

const notAllowed =
  "This computer does not allow it. Give yourself the permission to read and write there, or name another folder with --out or --cache.";

const advice: Readonly<Record<string, string>> = {
  ENOSPC: "The disk is full. Make room and run the command again; the last good site stands.",
  EDQUOT:
    "Your share of the disk is full. Make room and run the command again; the last good site stands.",
  EACCES: notAllowed,
  EPERM: notAllowed,
  EROFS: "That disk can only be read. Name another folder with --out or --cache.",
  EFBIG:
    "A file grew larger than this account may write. Ask whoever looks after this computer; the last good site stands.",
  EBUSY:
    "That is in use, or a disk of its own. Close what uses it, or name a folder inside it with --out; the last good site stands.",
  EIO: "The disk could not be read or written. Look after it first; the last good site stands.",
  ENOTDIR:
    "A file is there where a folder should be. Take it away, or name another folder with --out or --cache.",
  ENAMETOOLONG: "That name is longer than this disk can store. Give it a shorter one.",
  EMFILE: "Too many files are open at once. Close other programs and run the command again.",
};

/** What went wrong, in words. */
export function describeFailure(error: unknown): string {
  if (isWrongUsage(error) || error instanceof StagingLost) return error.message;
  if (!(error instanceof Error)) return `Something failed: ${String(error)}`;
  const { code, path, dest } = error as NodeJS.ErrnoException & { dest?: string };
  const place = dest ?? path;
  const known = code === undefined ? undefined : advice[code];
  if (known) return [place && `${place}:`, known].filter(Boolean).join(" ");
  return `Something in Tilebook itself failed. Please report it with these lines:\n${error.stack ?? error.message}`;
}
