/** How a word is written as a YAML value, so that it is read as it was meant. */
import { isScalar, isSeq } from "yaml";
import { isEmptyValue, parseYamlDocument } from "./yaml-document.ts";
import { isOdd } from "./yaml-values.ts";

/**
 * A word as it is written in YAML, between brackets or not: as it is where nothing else can be read
 * in it, else in quotes. One line, whatever it holds.
 */
export function writtenWord(word: string): string {
  return isPlain(word) ? word : JSON.stringify(word);
}

function isPlain(word: string): boolean {
  if (word.trim() === "" || /[\n\r#]|:$/u.test(word) || isOdd(word)) return false;
  const { contents, errors, warnings } = parseYamlDocument(`[${word}]`);
  if (errors.length + warnings.length > 0 || !isSeq(contents)) return false;
  const [only, ...more] = contents.items;
  if (more.length > 0 || isEmptyValue(only)) return false;
  return isScalar(only) && only.type === "PLAIN" && only.value === word;
}
