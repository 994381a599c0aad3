/**
 * The readings that a scale must reach, in the order of weighing: for 100 g, 1 kg and 5 kg as the
 * page stands, for any batch where its script runs.
 */
import type { VNode } from "preact";
import type { WeighedPart } from "../../src/catalogue/mixing/batches.ts";
import { isSlight, type ScaleReading, scaleReadings } from "../../src/chemistry/scale-readings.ts";
import { portionWords } from "../words/mixing/weighing.ts";
import { BucketDrawing } from "./bucket-drawing.tsx";

const batches = [
  [100, "100 g"],
  [1000, "1 kg"],
  [5000, "5 kg"],
] as const;

interface TableProps {
  readonly root: string;
  readonly batch: readonly WeighedPart[];
  /** Not for a blend, whose parts are those of its glazes. */
  readonly showsParts: boolean;
}

export function ScaleTable({ root, batch, showsParts }: TableProps): VNode {
  const base = batch
    .filter(({ isAddition }) => !isAddition)
    .reduce((sum, { parts }) => sum + parts, 0);
  const readings = batches.map(([grams]) =>
    scaleReadings(
      batch.map(({ parts, isAddition }) => ({ grams: (parts / base) * grams, isAddition })),
    ),
  );
  return (
    <table class="sheet-table">
      <caption>
        Set the scale to zero with the empty bucket on it. Add each material until the scale reads
        the large figure. The small one is what that adds.
      </caption>
      <thead>
        <tr>
          {batches.map(([, words]) => (
            <th scope="col" class="fixed-batch">
              {words}
            </th>
          ))}
          <td class="pail-cell" />
          <th scope="col">Material</th>
        </tr>
      </thead>
      <tbody>
        {batch.map((part, at) => (
          <Row
            {...{ root, batch, part, at, showsParts }}
            of={readings.flatMap((all) => all[at] ?? [])}
          />
        ))}
      </tbody>
    </table>
  );
}

interface RowProps extends TableProps {
  readonly part: WeighedPart;
  readonly at: number;
  /** For each of the batches. */
  readonly of: readonly ScaleReading[];
}

function Row({ root, batch, part, at, showsParts, of }: RowProps): VNode {
  return (
    <tr
      data-parts={Number(part.parts.toFixed(6))}
      data-name={part.name}
      {...(part.isAddition && { "data-addition": "" })}
      {...priceOf(part)}
    >
      {of.map((reading) => (
        <td class="fixed-batch">
          <Reading of={reading} />
        </td>
      ))}
      <td class="pail-cell">
        <BucketDrawing parts={batch} at={at} />
      </td>
      <th scope="row">
        {part.url === null ? part.name : <a href={root + part.url}>{part.name}</a>}
        <span class="portion">
          {portionWords({
            isAddition: part.isAddition,
            parts: showsParts ? part.parts : null,
            isSlight: isSlight(
              batch.map(({ parts }) => parts),
              at,
            ),
          })}
        </span>
      </th>
    </tr>
  );
}

function Reading({ of: { reading, amount } }: { readonly of: ScaleReading }): VNode {
  return (
    <>
      <span class="scale-reading">{reading}</span> <span class="adds">+ {amount}</span>
    </>
  );
}

function priceOf({ price }: WeighedPart) {
  return price === null ? {} : { "data-price": price };
}
