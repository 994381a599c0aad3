/** Which elements a line speaks of, however it was written: `PbO`, `PBO`, `Pb + Cd`, `lead oxide`. */

const symbols: ReadonlySet<string> = new Set(
  (
    "H He Li Be B C N O F Ne Na Mg Al Si P S Cl Ar K Ca Sc Ti V Cr Mn Fe Co Ni Cu Zn Ga Ge As Se Br " +
    "Kr Rb Sr Y Zr Nb Mo Tc Ru Rh Pd Ag Cd In Sn Sb Te I Xe Cs Ba La Ce Pr Nd Sm Eu Gd Tb Dy Ho Er " +
    "Tm Yb Lu Hf Ta W Re Os Ir Pt Au Hg Tl Pb Bi Th U"
  ).split(" "),
);

/** Names in words, and the materials of the trade whose name tells what is in them. */
const words: Readonly<Record<string, readonly string[]>> = {
  As: ["arsenic", "arsenious", "orpiment", "realgar"],
  Ba: ["barium", "witherite"],
  Be: ["beryllium", "beryl", "bertrandite"],
  Cd: ["cadmium"],
  Co: ["cobalt", "smalt", "zaffre"],
  Cr: ["chrome", "chromium", "chromic", "chromate", "chromite", "dichromate", "bichromate"],
  Cu: ["copper", "cupric", "cuprous", "malachite"],
  F: ["fluorine", "fluoride", "fluorspar", "cryolite"],
  Li: ["lithium", "lithia"],
  Mn: ["manganese"],
  N: ["nitrate", "nitre", "saltpetre"],
  Ni: ["nickel"],
  Pb: ["lead", "galena", "litharge", "massicot", "minium", "cerussite"],
  S: ["sulphate", "sulfate", "sulphide", "sulfide", "sulphur", "sulfur"],
  Sb: ["antimony", "antimonate", "antimoniate"],
  Se: ["selenium", "selenide"],
  Tl: ["thallium"],
  U: ["uranium", "uranate"],
  V: ["vanadium", "vanadate"],
};

/** Each with its oxides as sheets print them, to be found in any case: `PBO`, `pbo`, `sb2o3`. */
const spellings: ReadonlyMap<string, string> = new Map(
  Object.entries({
    As: ["As2O3", "As2O5"],
    Ba: ["BaO", "BaCO3", "BaSO4"],
    Be: ["BeO"],
    Cd: ["CdO", "CdS", "CdSe"],
    Co: ["CoO", "Co2O3", "Co3O4", "CoCO3"],
    Cr: ["Cr2O3", "CrO3"],
    Cu: ["CuO", "Cu2O", "CuCO3"],
    Li: ["Li2O", "Li2CO3"],
    Mn: ["MnO", "MnO2", "Mn2O3", "Mn3O4", "MnCO3"],
    Ni: ["NiO", "Ni2O3", "NiCO3"],
    Pb: ["PbO", "PbO2", "Pb3O4", "PbCO3"],
    Sb: ["Sb2O3", "Sb2O5"],
    Se: ["SeO2"],
    Tl: ["Tl2O", "Tl2O3"],
    U: ["UO2", "UO3", "U3O8"],
    V: ["V2O5", "V2O3"],
  }).flatMap(([element, oxides]) =>
    [element, ...oxides].map((written): [string, string] => [written.toLowerCase(), element]),
  ),
);

/** The elements a line of an analysis, or a formula that cannot be read, speaks of; each once. */
export function elementsNamedIn(line: string): readonly string[] {
  const pieces = line.split(/[^\p{L}\p{N}().·*]+/u).filter((piece) => piece !== "");
  const isPhrase = pieces.length > 1;
  const found = pieces.flatMap((piece) => {
    if (isPhrase && englishWords.has(piece.toLowerCase())) return [];
    return [...elementsOfFormula(piece), ...elementsInAnyCase(piece)];
  });
  return [...new Set([...found, ...elementsInWords(line)])];
}

/** Symbols that are words where they stand in a phrase: “As received”. */
const englishWords: ReadonlySet<string> = new Set(["as", "at", "be", "he", "i", "in", "no"]);

/** Whether a text has one of some words: not as a part of another, and not as what it is free of. */
export function wordFinder(wanted: readonly string[]): (text: string) => boolean {
  const pattern = new RegExp(
    `(?<![\\p{L}])(?<!(?:no|non|without|free of)[ -])(?:${wanted.join("|")})(?![\\p{L}])(?![ -]?(?:free|less)\\b)`,
    "iu",
  );
  return (text) => pattern.test(text);
}

const speakers = Object.entries(words).map(
  ([element, names]) => [element, wordFinder(names)] as const,
);

/** The elements that words speak of, in the name of a material or of a glaze; each once. */
export function elementsInWords(text: string): readonly string[] {
  return speakers.flatMap(([element, speaksOf]) => (speaksOf(text) ? [element] : []));
}

const formula = /^(?:[A-Z][a-z]?|[().·*]|\d)+$/u;

function elementsOfFormula(piece: string): readonly string[] {
  if (!formula.test(piece)) return [];
  const found = piece.match(/[A-Z][a-z]?/gu) ?? [];
  return found.every((symbol) => symbols.has(symbol)) ? found : [];
}

function elementsInAnyCase(piece: string): readonly string[] {
  // Carbon monoxide and a lone letter are no metal in another case.
  if (piece === "CO" || piece.length === 1) return [];
  const element = spellings.get(piece.toLowerCase());
  return element === undefined ? [] : [element];
}
