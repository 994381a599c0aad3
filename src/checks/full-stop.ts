/** A sentence as the message of a problem, which ends without a full stop. */
export function withoutFullStop(sentence: string): string {
  return sentence.replace(/\.$/u, "");
}
