/** The faults that keep the site from being built, each with its mend. */
import type { VNode } from "preact";
import { count } from "../words/english/numbers.ts";
import type { ToldFault, Trouble } from "./trouble.ts";

/** `3 errors in the records.` */
export function troubleHeading(trouble: Trouble): string {
  switch (trouble.kind) {
    case "failed":
      return "The site could not be built.";
    case "unwritten":
      return "The site could not be saved.";
    case "faults":
      return `${count(trouble.faults.length, "error")} in the records.`;
  }
}

/** Of more there is a count: the window in which the command runs tells them all. */
const mostShown = 40;

export function TroubleList({ trouble }: { readonly trouble: Trouble }): VNode {
  if (trouble.kind !== "faults") return <p class="failed">{trouble.words}</p>;
  const { faults } = trouble;
  const more = faults.length - mostShown;
  return (
    <>
      <ol>
        {faults.slice(0, mostShown).map((fault) => (
          <Fault {...fault} />
        ))}
      </ol>
      {more > 0 && <p>And {more} more: the window in which the command runs tells them all.</p>}
    </>
  );
}

function Fault({ file, line, message, hint, lineText }: ToldFault): VNode {
  return (
    <li>
      <p class="place">
        {file}, line {line}
      </p>
      <p>{message}</p>
      {lineText.trim() !== "" && (
        <pre>
          <code>{lineText.trim().slice(0, longestLine)}</code>
        </pre>
      )}
      <p class="mend">{hint}</p>
    </li>
  );
}

const longestLine = 200;
