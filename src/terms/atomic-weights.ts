/**
 * Atomic weights, one conventional value an element, for the elements that potters' materials
 * hold or have held.
 *
 * Source: CIAAW/IUPAC Standard Atomic Weights 2021 (Prohaska et al., Pure Appl. Chem. 94,
 * 573-600, 2022). Where the standard is an interval (H, Li, B, C, N, O, Mg, Si, S, Cl, Pb), the
 * conventional value inside it.
 */

/** How far a published value was compared with a copy of its source. */
export type Tag = "checked" | "from memory" | "derived";

export interface AtomicWeight {
  /** Relative to carbon-12; as g/mol, the molar mass. */
  readonly weight: number;
  readonly tag: Tag;
}

function checked(weight: number): AtomicWeight {
  return { weight, tag: "checked" };
}

function recalled(weight: number): AtomicWeight {
  return { weight, tag: "from memory" };
}

export const atomicWeights = {
  H: checked(1.008),
  Li: checked(6.94),
  Be: checked(9.0121831),
  B: checked(10.81),
  C: checked(12.011),
  N: checked(14.007),
  O: checked(15.999),
  F: checked(18.998403162),
  Na: checked(22.98976928),
  Mg: checked(24.305),
  Al: checked(26.9815384),
  Si: checked(28.085),
  P: checked(30.973761998),
  S: checked(32.06),
  Cl: checked(35.45),
  K: checked(39.0983),
  Ca: checked(40.078),
  Ti: checked(47.867),
  V: checked(50.9415),
  Cr: checked(51.9961),
  Mn: checked(54.938043),
  Fe: checked(55.845),
  Co: checked(58.933194),
  Ni: checked(58.6934),
  Cu: checked(63.546),
  Zn: checked(65.38),
  As: checked(74.921595),
  Se: checked(78.971),
  Rb: checked(85.4678),
  Sr: checked(87.62),
  Y: checked(88.905838),
  Zr: checked(91.224), // revised to 91.222(3) in 2024; the 2021 value is kept
  Nb: checked(92.90637),
  Mo: checked(95.95),
  Ag: checked(107.8682),
  Cd: checked(112.414),
  In: checked(114.818),
  Sn: checked(118.71),
  Sb: checked(121.76),
  Cs: recalled(132.90545196),
  Ba: recalled(137.327),
  La: recalled(138.90547),
  Ce: recalled(140.116),
  Pr: recalled(140.90766),
  Nd: recalled(144.242),
  Sm: recalled(150.36),
  Ho: recalled(164.930329),
  Er: recalled(167.259),
  Hf: recalled(178.486),
  W: recalled(183.84),
  Au: recalled(196.96657),
  Pb: recalled(207.2),
  Bi: recalled(208.9804),
  U: recalled(238.02891),
} as const satisfies Readonly<Record<string, AtomicWeight>>;

/** An element that has an atomic weight here. */
export type Element = keyof typeof atomicWeights;

export function isElement(symbol: string): symbol is Element {
  return Object.hasOwn(atomicWeights, symbol);
}
