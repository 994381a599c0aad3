/** Clays, micas, alumina, feldspars and silica. */
import { ofRole } from "./mineral.ts";

export const clays = [
  ...ofRole("clay", [
    ["kaolin", "Kaolin (china clay)", "kaolinite", "Al2Si2O5(OH)4"],
    ["calcined-kaolin", "Calcined kaolin", "metakaolin", "Al2O3·2SiO2"],
    ["halloysite", "Halloysite", "halloysite, 10 Å", "Al2Si2O5(OH)4·2H2O"],
    ["pyrophyllite", "Pyrophyllite", "", "Al2Si4O10(OH)2"],
    [
      "bentonite",
      "Bentonite",
      "sodium montmorillonite, idealised",
      "Na0.33Al1.67Mg0.33Si4O10(OH)2",
      "water between the layers is not counted: natural bentonite loses several per cent more",
    ],
  ]),
  ...ofRole("mica", [["mica", "Mica", "muscovite", "KAl3Si3O10(OH)2"]]),
  ...ofRole("alumina", [
    ["kyanite", "Kyanite (sillimanite, andalusite)", "", "Al2SiO5"],
    ["mullite", "Mullite", "", "3Al2O3·2SiO2"],
    ["calcined-alumina", "Alumina, calcined", "corundum", "Al2O3"],
    ["alumina-hydrate", "Alumina hydrate", "gibbsite", "Al(OH)3"],
    ["boehmite", "Boehmite", "", "AlO(OH)"],
  ]),
  ...ofRole("feldspar", [
    [
      "potash-feldspar",
      "Potash feldspar",
      "orthoclase, microcline",
      "KAlSi3O8",
      "the double formula, K2O·Al2O3·6SiO2, weighs 556.65; old texts use 557",
    ],
    ["soda-feldspar", "Soda feldspar", "albite", "NaAlSi3O8"],
    ["lime-feldspar", "Lime feldspar", "anorthite", "CaAl2Si2O8"],
    ["barium-feldspar", "Barium feldspar", "celsian", "BaAl2Si2O8"],
  ]),
  ...ofRole("feldspathoid", [
    ["soda-nepheline", "Soda nepheline", "nepheline, ideal sodium end member", "NaAlSiO4"],
    ["nepheline", "Nepheline", "nepheline, natural ideal", "Na3KAl4Si4O16"],
    ["leucite", "Leucite", "", "KAlSi2O6"],
  ]),
  ...ofRole("silica", [["silica", "Silica (quartz, flint)", "quartz", "SiO2"]]),
];
