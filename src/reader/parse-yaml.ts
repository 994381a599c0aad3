/** From YAML to a source, or to faults in a potter's words. */
import { visit } from "yaml";
import type { SourceMap } from "../records/read.ts";
import { longestYaml } from "../terms/limits.ts";
import { placeOfOffset } from "./decode-text.ts";
import type { TextFault } from "./problem-of-file.ts";
import { parseYamlDocument, startOf, type YamlDocument } from "./yaml-document.ts";
import { describeSourceFault, type FaultAt, findSyntaxFault } from "./yaml-faults.ts";
import { toSource } from "./yaml-source.ts";

export interface YamlReading {
  /** Null where nothing can be read. */
  readonly source: SourceMap | null;
  readonly faults: readonly TextFault[];
}

/**
 * Parses YAML of which every scalar is kept as text and every empty value is left out.
 *
 * @param yaml its lines numbered as in the file they come from
 */
export function parseYaml(yaml: string): YamlReading {
  if (yaml.length > longestYaml) return { source: null, faults: [tooLong] };
  const document = parseYamlDocument(yaml);
  const broken = findSyntaxFault(yaml, document);
  if (broken) return { source: null, faults: [faultAt(yaml, broken)] };
  const { source = {}, faults } = toSource(document.contents);
  const described = faults.map((fault) => faultAt(yaml, describeSourceFault(yaml, fault)));
  const all = [...described, ...findLostWords(yaml, document)];
  if (typeof source === "string" || Array.isArray(source))
    return { source: null, faults: [...all, notFields(yaml, document)] };
  return { source: source as SourceMap, faults: all };
}

function faultAt(yaml: string, { offset, ...fault }: FaultAt): TextFault {
  return { severity: "error", ...fault, ...placeOfOffset(yaml, offset) };
}

const tooLong: TextFault = {
  severity: "error",
  code: "yaml-too-long",
  message: `The fields are longer than the ${longestYaml / 1000},000 letters that are read`,
  hint: "Write long texts as notes, beneath the second line “---”.",
  line: 1,
  column: 1,
};

function notFields(yaml: string, document: YamlDocument): TextFault {
  return faultAt(yaml, {
    offset: startOf(document.contents),
    code: "no-fields",
    message: "Here should stand fields, and something else was found",
    hint: "Write each field on a line of its own, as “name: value”.",
  });
}

/** `name: Red #5` is read as `Red`: what looks like a comment may have been meant. */
function findLostWords(yaml: string, document: YamlDocument): TextFault[] {
  if (!/\s#\S/u.test(yaml)) return [];
  const faults: TextFault[] = [];
  visit(document, {
    Scalar: (_, node) => {
      const lost = /^[^\s#][^\n]*/u.exec(node.comment ?? "")?.[0];
      const end = node.range?.[1];
      if (lost === undefined || end === undefined) return;
      const offset = yaml.indexOf(`#${lost}`, end);
      if (offset >= 0 && !yaml.slice(end, offset).includes("\n"))
        faults.push({ ...readAsComment(lost), ...placeOfOffset(yaml, offset) });
    },
  });
  return faults;
}

function readAsComment(lost: string): Omit<TextFault, "line" | "column"> {
  return {
    severity: "warning",
    code: "read-as-comment",
    message: `“#${lost}” is read as a comment, not as part of the value`,
    hint: "Put the whole value in quotes, or write a space after “#” if a comment is meant.",
  };
}
