/** The files that the tile form is filled with: what may be chosen, and the layers of each tile. */
import type {
  Atmosphere,
  KindOfFiring,
  KindOfGlaze,
  Movement,
  Opacity,
  Tone,
  WayOfHandingIn,
} from "../terms/choices.ts";
import type { Cone } from "../terms/cones.ts";

/** All that the form has to know of a site. A field that is left out is not known. */
export interface FormSite {
  readonly studio: string;
  /** Those that run now, or ran last, first. */
  readonly sets: readonly FormSet[];
  readonly glazes: readonly FormGlaze[];
  readonly clays: readonly FormClay[];
  /** The newest loads. */
  readonly firings: readonly FormFiring[];
  /** Codes that tiles have or had, in ranges. */
  readonly taken: readonly string[];
  readonly handingIn: {
    readonly by: WayOfHandingIn;
    readonly words?: string | undefined;
    readonly repository?: string | undefined;
  };
  /** How many files hold the layers of tiles. */
  readonly layerFiles: number;
}

export interface FormSet {
  readonly id: string;
  readonly name: string;
  readonly begins?: string | undefined;
  readonly ends?: string | undefined;
  readonly jars: readonly (readonly [jar: string, glaze: string])[];
  /** Codes that it reserves, in ranges. */
  readonly codes: readonly string[];
  /** Its control tile, whose code is nobody else's. */
  readonly control?: string | undefined;
  readonly gives: FormDefaults;
  /** Its sheets of notes to print. */
  readonly sheets?: string | undefined;
}

/** What a set gives to its tiles; `clay` by its id. */
export interface FormDefaults {
  readonly formed?: string | undefined;
  readonly glazed?: string | undefined;
  readonly clay?: string | undefined;
  readonly "clay-batch"?: string | undefined;
  readonly texture?: string | undefined;
  readonly shape?: string | undefined;
  readonly angle?: string | undefined;
  /** True where it names the maker, whose key nobody is told. */
  readonly maker?: true | undefined;
}

export interface FormGlaze {
  readonly id: string;
  readonly name: string;
  readonly url: string;
  readonly kind: KindOfGlaze;
  readonly cones?: string | undefined;
  readonly cover?: Opacity | undefined;
  readonly moves?: Movement | undefined;
  readonly tone?: Tone | undefined;
  /** The colour that it measured alone, as `#rrggbb`. */
  readonly hex?: string | undefined;
  /** False where the studio keeps none of it. */
  readonly stocked?: false | undefined;
  /** What may never be left out of what is said of it, in a few words each. */
  readonly loud?: readonly string[] | undefined;
  readonly quiet?: readonly string[] | undefined;
}

export interface FormClay {
  readonly id: string;
  readonly name: string;
  readonly cones?: string | undefined;
  readonly colour?: string | undefined;
  readonly reclaim?: true | undefined;
}

export interface FormFiring {
  readonly id: string;
  readonly kind: KindOfFiring;
  readonly on?: string | undefined;
  readonly cone?: Cone | undefined;
  readonly atmosphere?: Atmosphere | undefined;
}

/** A field of a step as a record holds it. */
export type WrittenField = string | readonly string[] | Readonly<Record<string, string>>;

/** A step of `layers:` as a record holds it. */
export type WrittenStep = Readonly<Record<string, WrittenField>>;

/** The layers of some tiles, by their codes. */
export type FormLayers = Readonly<Record<string, readonly WrittenStep[]>>;
