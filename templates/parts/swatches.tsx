/** Measured colour: a swatch for each part of the palette, and what was measured in figures. */
import type { VNode } from "preact";
import type { MeasuredColour } from "../../src/colour/measure.ts";
import { withPlaces } from "../../src/terms/figures.ts";
import { colourSentence, spreadSentences } from "../words/colour/measured.ts";

interface SwatchesProps {
  readonly root: string;
  /** The code of the tile that was measured. */
  readonly tile: string;
  readonly colour: MeasuredColour;
}

/** The palette as one bar, each colour as wide as its share of the picture. */
export function Swatches({ root, tile, colour }: SwatchesProps): VNode {
  let at = 0;
  const parts = colour.palette.map(({ hex, share }) => {
    const x = at;
    at += share * 100;
    return <rect x={x.toFixed(1)} width={(share * 100).toFixed(1)} height="8" fill={hex} />;
  });
  const [l, a, b] = colour.lab.map((value) => withPlaces(value, 0));
  return (
    <figure class="swatches">
      <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
        {parts}
      </svg>
      <figcaption>
        <p>
          {colourSentence(colour)} {spreadSentences(colour).join(" ")}
        </p>
        <p>
          <span class="figures">{colour.hex}</span>, lightness <span class="figures">{l}</span>,
          green to red <span class="figures">{a}</span>, blue to yellow{" "}
          <span class="figures">{b}</span>. Screens and lamps differ: trust the tile, not the
          screen.
        </p>
        <p class="screen">
          <a href={`${root}index.html?like=${encodeURIComponent(tile)}`}>
            Tiles of a colour like this
          </a>
        </p>
      </figcaption>
    </figure>
  );
}
