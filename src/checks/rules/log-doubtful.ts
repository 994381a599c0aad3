import type { LogNote } from "../../firing/log.ts";
import type { Firing } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import type { Finding, FiringRule } from "../check.ts";
import { withoutFullStop } from "../full-stop.ts";

export const logDoubtful: FiringRule = {
  of: "firing",
  name: "log-doubtful",
  severity: "warning",
  explains:
    "A firing's log says itself what is time and what is temperature, and has neither gaps nor dropouts; where it does not, what was taken for what is told.",
  find: (_, firing, { heats }) => {
    const log = heats.get(idKey(firing.id))?.log;
    if (!log) return [];
    const doubts = log.notes.filter(({ severity }) => severity !== "error");
    return [...deductions(firing, log.deduced), ...doubts.map((note) => doubt(firing, note))];
  },
};

function deductions({ log }: Firing, deduced: readonly string[]): readonly Finding[] {
  if (!log || deduced.length === 0) return [];
  return [
    {
      file: log.file,
      path: [],
      line: 1,
      message: `The log does not say itself what it holds. ${withoutFullStop(deduced.join(" "))}`,
      hint: "If that is right, nothing needs mending; labels in the log's first line settle it.",
    },
  ];
}

function doubt({ log }: Firing, { line = 1, message, hint }: LogNote): Finding {
  return {
    ...(log && { file: log.file }),
    path: [],
    line,
    message: withoutFullStop(message),
    hint: hint ?? "If that is right, nothing needs mending; otherwise export the log again.",
  };
}
