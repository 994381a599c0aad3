/** What breaks the HTML standard in the markup of a page. */
import { HtmlValidate } from "html-validate/node";

const validator = new HtmlValidate({
  extends: ["html-validate:standard", "html-validate:a11y"],
  rules: {
    // Matters of style, which the renderer decides.
    "void-style": "off",
    "no-trailing-whitespace": "off",
    "long-title": "off",
  },
});

/** Each fault as `line:column rule: message`. */
export async function markupFaultsOf(html: string, page: string): Promise<string[]> {
  const { results } = await validator.validateString(html, page);
  return results.flatMap(({ messages }) =>
    messages.map(({ line, column, ruleId, message }) => `${line}:${column} ${ruleId}: ${message}`),
  );
}
