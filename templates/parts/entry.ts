/** A tile as it stands on a wall, in a strip, in a list. */
import type { Stage } from "../../src/terms/choices.ts";
import type { LayerView } from "../drawing/layer-view.ts";
import type { CardOutcomeFacts } from "../words/tile/card.ts";
import type { SmallPicture } from "./photograph.tsx";

export interface TileEntry {
  readonly id: string;
  /** Relative to the root. */
  readonly url: string;
  /** Its glazes by name, top coat first: `Tidewrack over Soot`. */
  readonly names: string;
  readonly picture: SmallPicture | null;
  readonly view: LayerView;
  readonly stage: Stage;
  readonly outcome: CardOutcomeFacts;
}
