/** What is to be minded, beside what it is about. */
import type { Caution } from "../../../loads/caution.ts";
import { element } from "../../parts/element.ts";

/** What stops the load first, each with its word, so that no colour has to tell. */
export function cautionItems(cautions: readonly Caution[]): readonly HTMLLIElement[] {
  return cautions.map(({ severity, message, hint }) => {
    const isStop = severity === "error";
    return element(
      "li",
      { class: isStop ? "stop" : "look" },
      element("b", {}, isStop ? "Stop" : "Look"),
      ` ${message}. `,
      element("span", { class: "quiet" }, hint),
    );
  });
}
