/**
 * What to weigh out for a batch: 100 g, 1 kg and 5 kg as the page stands, any batch where its
 * script runs. It is printed by itself, with its cautions.
 */
import type { VNode } from "preact";
import type { GlazeTold } from "../../src/catalogue/glazes.ts";
import type { WeighedPart } from "../../src/catalogue/mixing/batches.ts";
import type { DryDensity } from "../../src/chemistry/dry-density.ts";
import { dryGrams, usualLossPerCent, waterPerGram } from "../../src/chemistry/weighing.ts";
import { listed } from "../words/english/numbers.ts";
import { asPrice, readOnScale, roughly } from "../words/mixing/chemistry.ts";
import { densityWords } from "../words/mixing/weighing.ts";
import { Hazards } from "./hazards.tsx";

interface WeighingProps {
  readonly root: string;
  readonly glaze: GlazeTold;
}

const batches = [
  [100, "100 g"],
  [1000, "1 kg"],
  [5000, "5 kg"],
] as const;

export function WeighingSheet({ root, glaze }: WeighingProps): VNode | null {
  const { batch, dryDensity, name, hazards, ingredients } = glaze;
  if (!batch) return null;
  const hasAdditions = batch.some(({ isAddition }) => isAddition);
  return (
    <section class="weighing" id="weighing">
      <h2>Weighing out {name}</h2>
      <div class="columns">
        <div>
          <SheetTable root={root} batch={batch} showsParts={ingredients !== null} />
          <p class="quiet">
            {hasAdditions ? "Batch: base recipe, additions on top." : "Batch: by its dry weight."}{" "}
            <Cost batch={batch} />
          </p>
          {dryDensity && <ByTheBucket density={dryDensity} />}
        </div>
        <div id="mind">
          <Hazards root={root} hazards={hazards} />
        </div>
      </div>
    </section>
  );
}

interface TableProps {
  readonly root: string;
  readonly batch: readonly WeighedPart[];
  readonly showsParts: boolean;
}

function SheetTable({ root, batch, showsParts }: TableProps): VNode {
  const base = sumOf(batch.filter(({ isAddition }) => !isAddition));
  const total = sumOf(batch);
  return (
    <table class="sheet-table">
      <thead>
        <tr>
          <th scope="col">Material</th>
          {showsParts && <th scope="col">Parts</th>}
          {batches.map(([, words]) => (
            <th scope="col" class="fixed-batch">
              {words}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {batch.map((part) => (
          <tr
            data-parts={Number(part.parts.toFixed(6))}
            {...(part.isAddition && { "data-addition": "" })}
            {...priceOf(part)}
          >
            <th scope="row">
              <input type="checkbox" aria-label={`${part.name}: weighed`} />
              {part.isAddition && "+ "}
              {part.url === null ? part.name : <a href={root + part.url}>{part.name}</a>}
            </th>
            {showsParts && <td>{Number(part.parts.toFixed(2))}</td>}
            {batches.map(([grams]) => (
              <td class="fixed-batch">{readOnScale((part.parts / base) * grams)}</td>
            ))}
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Total, dry</th>
          {showsParts && <td>{Number(total.toFixed(2))}</td>}
          {batches.map(([grams]) => (
            <td class="fixed-batch">{readOnScale((total / base) * grams)}</td>
          ))}
        </tr>
      </tfoot>
    </table>
  );
}

function priceOf({ price }: WeighedPart) {
  return price === null ? {} : { "data-price": price };
}

function sumOf(batch: readonly WeighedPart[]): number {
  return batch.reduce((sum, { parts }) => sum + parts, 0);
}

/** What it costs, or the part of it that is known; nothing where no price is. */
function Cost({ batch }: { readonly batch: readonly WeighedPart[] }): VNode | null {
  const unpriced = batch.filter(({ price }) => price === null).map(({ name }) => name);
  if (unpriced.length === batch.length) return null;
  const total = batch.reduce((sum, { parts, price }) => sum + parts * (price ?? 0), 0);
  const amount = asPrice(total / sumOf(batch));
  const figures = <span class="figures">{amount}</span>;
  if (unpriced.length === 0)
    return <span class="cost">A dry kilogram costs {figures} by the prices of its materials.</span>;
  const missing = `no price is recorded for ${listed(unpriced)}`;
  if (amount === "0.00")
    return <span class="cost">What a dry kilogram costs is not known: {missing}.</span>;
  return (
    <span class="cost">
      A dry kilogram costs at least {figures}: {missing}.
    </span>
  );
}

const gravities = [1.4, 1.45, 1.5] as const;

/** Brongniart's relation with this recipe's density, and what it comes to at the usual gravities. */
function ByTheBucket({ density }: { readonly density: DryDensity }): VNode {
  const { low, likely, high } = density;
  return (
    <div
      class="bucket"
      data-dry-density={likely.toFixed(2)}
      data-dry-density-low={low.toFixed(2)}
      data-dry-density-high={high.toFixed(2)}
      data-loss={usualLossPerCent}
    >
      <h3>By the bucket</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">Specific gravity</th>
            <th scope="col">Dry glaze in a litre</th>
            <th scope="col">Water to a dry kilogram</th>
          </tr>
        </thead>
        <tbody>
          {gravities.map((gravity) => (
            <tr>
              <th scope="row">{gravity.toFixed(2)}</th>
              <td>{roughly(dryGrams(litreOf(gravity, likely)))} g</td>
              <td>{roughly(1000 * waterPerGram(gravity, likely))} ml</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="quiet">{densityWords(density)}</p>
      <p class="quiet">
        After Brongniart, grams of dry glaze in a litre = 1000 (gravity − 1) d ÷ (d − 1). Sieve,
        bucket and drips keep about {usualLossPerCent} per cent (common practice, no source): mix
        that much more than you need. What dissolves, as soda ash does, takes less room than its
        powder.
      </p>
    </div>
  );
}

function litreOf(specificGravity: number, dryDensity: number) {
  return { litres: 1, specificGravity, dryDensity };
}
