/** How `tilebook check` is written. */
import { InvalidArgumentError } from "commander";
import type { ReportFormat } from "../../reporting/report.ts";
import { archiveOption, cacheOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addCheck: AddCommand = (program, { finish }) => {
  program
    .command("check")
    .description("find every fault of the archive")
    .option(...archiveOption)
    .option(...cacheOption)
    .option("--format <form>", reportFormats.join(", "), readFormat, "text" as const)
    .option(
      "--since <ref>",
      "what changed since that branch, tag or commit first, the rest in short",
    )
    .option("--all", "in text, tell a fault that many files share for each of them", false)
    .option("--fix", "show what can be mended without a guess, ask, and do it", false)
    .option("--yes", "with --fix: do it without asking", false)
    .action(async (options) => {
      const [{ check }, { terminalAsk }] = await Promise.all([
        import("./check.ts"),
        import("../ask.ts"),
      ]);
      finish(await check(options, terminalAsk()));
    });
};

const reportFormats: readonly ReportFormat[] = ["text", "json", "github", "gitlab"];

function readFormat(found: string): ReportFormat {
  const format = reportFormats.find((known) => known === found);
  if (format) return format;
  throw new InvalidArgumentError(`Choose from: ${reportFormats.join(", ")}.`);
}
