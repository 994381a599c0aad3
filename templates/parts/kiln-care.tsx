/** What to mind at a kiln: said wherever a firing or a kiln is shown. */
import type { VNode } from "preact";
import type { HeatSource, KindOfFiring } from "../../src/terms/choices.ts";

/** Fires that burn something in the kiln or outside it. */
const flames: readonly HeatSource[] = ["gas", "oil", "pit", "salt", "saggar", "soda", "wood"];

interface KilnCareProps {
  readonly root: string;
  readonly heatedBy: readonly HeatSource[];
  readonly kinds: readonly KindOfFiring[];
}

export function KilnCare({ root, heatedBy, kinds }: KilnCareProps): VNode {
  const isRaku = kinds.includes("raku");
  const burns = isRaku || heatedBy.some((source) => flames.includes(source));
  return (
    <section class="cautions kiln-care" aria-label="Cautions">
      <div class="caution">
        <p>
          <b>Before firing</b> Dry the work through: water in clay boils and bursts it. Air the room
          and stay out of it while the kiln heats;{" "}
          {burns
            ? "a flame gives off carbon monoxide, which nobody smells: keep an alarm for it."
            : "clay, wax, lustre and glaze give off fumes."}{" "}
          Look in only through dark glasses made for it, and open nothing that is too hot for bare
          hands{isRaku && ", but for raku that is drawn out with tongs"}.
        </p>
        <p class="quiet">
          This is what happened in this kiln with this load, not an instruction for another. Go by
          the kiln’s manual, local rules and whoever is in charge of the kiln.{" "}
          <a href={`${root}care.html#kilns`}>Kilns</a> and{" "}
          <a href={`${root}care.html#fumes`}>fumes</a> in full.
        </p>
      </div>
    </section>
  );
}

/** Glowing ware, and the smoke of what it is put into: at the head of a page of raku. */
export function RakuCare({ kinds }: Pick<KilnCareProps, "kinds">): VNode | null {
  if (!kinds.includes("raku")) return null;
  return (
    <section class="cautions" aria-label="Raku">
      <div class="caution loud">
        <p>
          <b>Raku</b> The ware is drawn glowing and sets fire to what it is put into. Do it
          outdoors, away from windows and air intakes, on ground that cannot burn. Wear long gloves
          made for such heat, a face shield, boots, and cotton or wool that covers arms and legs;
          tie hair back. Keep people without these well away, and a lid, sand and water at hand.
        </p>
        <p>
          Sawdust, leaves and paper under a lid give off thick smoke with carbon monoxide in it:
          stand upwind, and open a lid from the far side, for what is inside can flare up. Raku ware
          is porous and its glaze is soft: it is not for food or drink.
        </p>
        <p class="quiet source">
          Source: Western Carolina University, Ceramics safety, for outdoors, windows and smoke; the
          rest is common practice, no source.
        </p>
      </div>
    </section>
  );
}
