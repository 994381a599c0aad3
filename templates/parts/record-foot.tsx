/** The foot of a record: when it changed, and the ways to its file. */
import type { VNode } from "preact";
import {
  changedSentence,
  type RecordDates,
  recordWays,
  writtenBySentence,
} from "../words/site/record.ts";

export interface RecordFootProps {
  /** Null where nobody asked git. */
  readonly dates: RecordDates | null;
  /** The forge's pages; left out where there are none. */
  readonly ways: Readonly<Partial<Record<keyof typeof recordWays, string>>>;
}

export function RecordFoot({ of }: { readonly of: RecordFootProps | null }): VNode | null {
  if (!of) return null;
  const told = of.dates && [changedSentence(of.dates), writtenBySentence(of.dates)];
  const said = told?.filter(Boolean).join(" ");
  const ways = (["edit", "commits", "report"] as const).flatMap((way) => {
    const address = of.ways[way];
    return address === undefined ? [] : [{ address, name: recordWays[way] }];
  });
  if (!said && ways.length === 0) return null;
  return (
    <footer class="record-foot">
      {said && <p>{said}</p>}
      {ways.length > 0 && (
        <ul class="record-ways">
          {ways.map(({ address, name }) => (
            <li>
              <a href={address}>{name}</a>
            </li>
          ))}
        </ul>
      )}
    </footer>
  );
}
