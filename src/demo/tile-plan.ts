/** What the picture of a tile is made from: its record, with every id looked up. */
export interface TilePlan {
  readonly code: string;
  readonly set: string;
  readonly maker: string;
  readonly clay: ClayLook;
  /** Whether the clay was fired too hot for it, so that its colour comes through the glaze. */
  readonly bleeds: boolean;
  readonly texture: string;
  readonly shape: string;
  /** Degrees between wall and ground of a piece that stands. */
  readonly angle: number;
  readonly steps: readonly Step[];
  readonly surfaces: readonly string[];
  readonly effects: readonly string[];
  readonly faults: readonly string[];
  /** Millimetres that the glaze moved, where the record says. */
  readonly run: number | undefined;
  readonly fate: string | undefined;
  /** What is scratched into the clay, on the back of a tile. */
  readonly scratched: string | undefined;
  /** Where the record says that the grey card lies. */
  readonly card: PicturePart | undefined;
  /** What the motif shows, where the maker says so. */
  readonly motif: string | undefined;
  /** What was pressed, stamped or rolled into the clay, where the studio's own words say so. */
  readonly figure: string | undefined;
}

/** A part of the picture, in per cent of it. */
export interface PicturePart {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type Step = CoatStep | ResistStep | RemoveStep | FireStep;

export interface CoatStep {
  readonly does: "coat";
  readonly glaze: GlazeLook;
  /** A second glaze that takes over along a direction. */
  readonly fade: { readonly to: GlazeLook; readonly along: string } | undefined;
  readonly coats: number;
  readonly cover: string | undefined;
  readonly by: string;
  readonly where: readonly string[];
  /** 1 as usual. */
  readonly thickness: number;
}

export interface ResistStep {
  readonly does: "resist";
  readonly material: string;
  /** Two strips of it, crossing. */
  readonly cross: boolean;
  readonly where: readonly string[];
}

export interface RemoveStep {
  readonly does: "remove";
  readonly way: string;
  readonly where: readonly string[];
}

export interface FireStep {
  readonly does: "fire";
  readonly kind: string;
  /** Place in the order of cones, 022 the lowest; undefined where nothing is known. */
  readonly heat: number | undefined;
  readonly atmosphere: string;
}

/** How a clay looks when fired. Colours are sRGB, "#rrggbb". */
export interface ClayLook {
  readonly bare: string;
  /** Iron spots: their colour and how thickly they are sown, 0 to 1. */
  readonly speck: string;
  readonly specks: number;
  /** Coarseness of the bare surface, 0 porcelain to 1 grogged. */
  readonly grog: number;
}

/** How a glaze looks when fired as its label asks. */
export interface GlazeLook {
  readonly id: string;
  readonly kind: string;
  /** Lowest and highest place in the order of cones. */
  readonly range: readonly [number, number] | undefined;
  /** Colour where it lies thick enough to hide what is beneath. */
  readonly thick: string;
  /** Colour towards which it breaks where it thins. */
  readonly thin: string;
  /** Colour of the powder where it did not melt; a pale shade of the melt if left out. */
  readonly raw?: string;
  /** Colour where it stands deep: in hollows, in the roll at the end of a run. */
  readonly pool?: string;
  /** 0 clear, 1 hides the clay in a usual coat. */
  readonly hiding: number;
  /** 0 stays where it was put, 1 runs. */
  readonly flow: number;
  readonly surface: string;
  readonly speck?: { readonly colour: string; readonly amount: number };
  /** A second colour that floats in it, in clouds and rivulets. */
  readonly float?: { readonly colour: string; readonly amount: number };
  /** Weight of a coat relative to other glazes. */
  readonly weight: number;
  readonly metal?: number;
  /** Crystals that it grows where the kiln lets it: their colour, largest radius in millimetres, and whether only some grow. */
  readonly crystal?: {
    readonly colour: string;
    readonly size: number;
    readonly few?: boolean;
  };
}
