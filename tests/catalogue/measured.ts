/** Catalogues of small archives whose photographs were measured. */
import type { Findings } from "../../src/catalogue/findings.ts";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import type { Catalogue } from "../../src/catalogue/types.ts";
import { type Lab, labToLinear } from "../../src/colour/cielab.ts";
import type { MeasuredColour } from "../../src/colour/measure.ts";
import { nameColour } from "../../src/colour/name.ts";
import { linearToOklab } from "../../src/colour/oklab.ts";
import { linearToHex } from "../../src/colour/srgb.ts";
import { archive } from "../checks/support.ts";

/** A colour as if it had been measured on a photograph. */
export function measured(lab: Lab, more: Partial<MeasuredColour> = {}): MeasuredColour {
  const hex = linearToHex(labToLinear(lab));
  return {
    lab,
    hex,
    name: nameColour(linearToOklab(labToLinear(lab))),
    spread: 2,
    palette: [{ hex, share: 1 }],
    accepted: 1,
    clipped: 0,
    greyCard: { used: true, exposure: "as-taken" },
    ...more,
  };
}

/** The catalogue of an archive, with the colours measured on its tiles by their codes. */
export function measuredCatalogue(
  parts: Parameters<typeof archive>[0],
  colours: Readonly<Record<string, Lab | MeasuredColour>>,
): Catalogue {
  const pictures = Object.entries(colours).map(([code, colour]) => {
    const url = `pictures/${code}.jpg`;
    const prepared = {
      width: 320,
      height: 240,
      placeholder: "#888888",
      files: [{ url, format: "jpeg" as const, width: 320, height: 240 }],
      colour: "lab" in colour ? colour : measured(colour),
    };
    return [`tiles/${code}.jpg`, prepared] as const;
  });
  const findings: Findings = {
    pictures: new Map(pictures),
    chemistry: new Map(),
    heats: new Map(),
    notes: new Map(),
    builtInMaterials: [],
  };
  return makeCatalogue(archive(parts), findings);
}
