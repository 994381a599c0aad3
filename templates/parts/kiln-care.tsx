/** What to mind at a kiln: said wherever a firing or a kiln is shown. */
import type { VNode } from "preact";
import type { HeatSource } from "../../src/terms/choices.ts";

/** Fires that burn something in the kiln or outside it. */
const flames: readonly HeatSource[] = ["gas", "oil", "pit", "salt", "saggar", "soda", "wood"];

export function KilnCare(props: {
  readonly root: string;
  readonly heatedBy: readonly HeatSource[];
}): VNode {
  const burns = props.heatedBy.some((source) => flames.includes(source));
  return (
    <section class="cautions kiln-care" aria-label="Cautions">
      <div class="caution">
        <p>
          <b>Before firing</b> Dry the work through: water in clay boils and bursts it. Air the room
          and stay out of it while the kiln heats;{" "}
          {burns
            ? "a flame gives off carbon monoxide, which nobody smells: keep an alarm for it."
            : "clay, wax, lustre and glaze give off fumes."}{" "}
          Wear dark glasses at the spyhole and open nothing that is too hot for bare hands.
        </p>
        <p class="quiet">
          What is shown here happened in this kiln with this load, and is no instruction for
          another. The kiln’s manual, local rules and whoever answers for the kiln decide.{" "}
          <a href={`${props.root}care.html#kilns`}>Kilns</a> and{" "}
          <a href={`${props.root}care.html#fumes`}>fumes</a> in full.
        </p>
      </div>
    </section>
  );
}
