/** Sound archives with something planted in them, each in a folder that goes when its test ends. */
import { onTestFinished } from "vitest";
import { type Files, soundFiles, writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { tilebook } from "./tilebook.ts";

/** A folder with these files, for one test. */
export async function folderWith(files: Files): Promise<string> {
  const folder = await writeFolder(files);
  onTestFinished(() => removeFolder(folder));
  return folder;
}

/** The sound archive with these files besides, or instead. */
export async function archiveWith(files: Files): Promise<string> {
  return folderWith({ ...(await soundFiles()), ...files });
}

/** A problem as `check --format json` tells it. */
export interface ToldProblem {
  readonly severity: string;
  readonly code: string;
  readonly file: string;
  readonly line: number;
  readonly message: string;
  readonly hint: string;
}

/** Checks an archive and gives its exit code and its errors. */
export async function errorsOf(
  archive: string,
): Promise<{ code: number | null; errors: ToldProblem[] }> {
  const { code, out } = await tilebook("check", "--archive", archive, "--format", "json");
  const { problems } = JSON.parse(out) as { problems: ToldProblem[] };
  return { code, errors: problems.filter(({ severity }) => severity === "error") };
}
