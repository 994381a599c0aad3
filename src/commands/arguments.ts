/** Options that several commands share, and how their values are read. */
import { type Command, InvalidArgumentError, Option } from "commander";

export const archiveOption = ["--archive <folder>", "the archive", "."] as const;

export const cacheOption = [
  "--cache <folder>",
  "where the pictures that were made are remembered between runs",
] as const;

export const outOption = [
  "--out <folder>",
  "where the site is written; site in the archive if left out",
] as const;

/** For people or programs: what is printed as a table, and as JSON too. */
export function formatOption(): Option {
  return new Option("--format <form>", "for people or programs")
    .choices(["text", "json"])
    .default("text");
}

export function readIds(found: string): readonly string[] {
  const ids = found.split(",").map((id) => id.trim());
  if (ids.every((id) => id !== "")) return ids;
  throw new InvalidArgumentError("Write ids with commas between them, as in kaolin,talc.");
}

export function readPort(found: string): number {
  const port = Number(found);
  if (/^\d+$/u.test(found) && port > 0 && port < 65_536) return port;
  throw new InvalidArgumentError("A port is a whole number from 1 to 65535.");
}

/**
 * Options of `new` itself are read wherever they stand: those that say nothing of what is made are refused.
 *
 * @param made what it is: `one tile`
 */
export function refuseBlendOptions(command: Command, made: string): void {
  const own = command.options.map((option) => option.attributeName());
  const given = command.parent?.options.find((option) => {
    const name = option.attributeName();
    return !own.includes(name) && command.parent?.getOptionValueSource(name) === "cli";
  });
  if (given) command.error(`error: ${given.long} is for a blend, and this is ${made}`);
}
