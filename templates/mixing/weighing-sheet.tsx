/**
 * Weighing out a batch as a scale shows it: 100 g, 1 kg and 5 kg as the page stands, any batch, one
 * material at a time, where its script runs. It is printed on a page of its own, with its cautions.
 */
import type { ComponentChildren, VNode } from "preact";
import type { GlazeTold } from "../../src/catalogue/glazes.ts";
import type { WeighedPart } from "../../src/catalogue/mixing/batches.ts";
import type { DryDensity } from "../../src/chemistry/dry-density.ts";
import { dryGrams, usualLossPerCent, waterPerGram } from "../../src/chemistry/weighing.ts";
import { listed } from "../words/english/numbers.ts";
import { asPrice, roughly } from "../words/mixing/chemistry.ts";
import { densityWords } from "../words/mixing/weighing.ts";
import { BucketLayers } from "./bucket-drawing.tsx";
import { Hazards } from "./hazards.tsx";
import { ScaleTable } from "./scale-table.tsx";

interface WeighingProps {
  readonly root: string;
  readonly glaze: GlazeTold;
  /** What is beside the scale on a desk, and before it on paper. */
  readonly children: ComponentChildren;
}

/** The bench: the scale, and beside it what else a mixer looks at, which is printed before it. */
export function WeighingSheet({ root, glaze, children }: WeighingProps): VNode | null {
  const { batch, dryDensity, name, hazards, ingredients } = glaze;
  if (!batch) return null;
  const hasAdditions = batch.some(({ isAddition }) => isAddition);
  return (
    <section class="weighing" id="weighing">
      <div class="beside-scale">{children}</div>
      <div class="scale">
        <h2>Weighing out {name}</h2>
        <p class="quiet measure">
          Dry materials are dust: wear a fitted mask, wipe up wet, never sweep.{" "}
          <a class="screen" href="#mind">
            What to mind in this glaze
          </a>
        </p>
        <BucketLayers parts={batch} />
        <ScaleTable root={root} batch={batch} showsParts={ingredients !== null} />
        <p class="print-place" data-print="Print this sheet" data-only="sheet-only" />
        <p class="quiet measure">
          {hasAdditions ? "Batch: base recipe, additions on top." : "Batch: by its dry weight."}{" "}
          <Cost batch={batch} />
        </p>
      </div>
      {dryDensity && <ByTheBucket density={dryDensity} />}
      <div id="mind">
        <Hazards root={root} hazards={hazards} />
      </div>
    </section>
  );
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
