/** The photographs of a tile: the result as large as the window allows, the others beneath. */
import type { VNode } from "preact";
import type { Picture } from "../../src/catalogue/pictures.ts";
import type { CatalogueTile } from "../../src/catalogue/tiles.ts";
import { stageName } from "../words/tile/outcome.ts";
import { pictureAlt } from "../words/tile/stack.ts";
import { largestFile, Photograph } from "./photograph.tsx";

const captions = {
  result: "",
  detail: "A detail",
  back: "The back",
  before: "Before the last firing",
} as const;

export function Plates({
  root,
  tile,
}: {
  readonly root: string;
  readonly tile: CatalogueTile;
}): VNode {
  const [first, ...others] = tile.pictures;
  return (
    <div class="plates">
      <div class="held">
        {first ? (
          <Plate root={root} picture={first} alt={pictureAlt(tile, first)} large />
        ) : (
          <figure class="plate">
            <span class="photograph none">
              <span>No photograph: {stageName(tile.stage)}</span>
            </span>
          </figure>
        )}
        {others.length > 0 && (
          <div class="more-plates">
            {others.map((picture) => (
              <Plate root={root} picture={picture} alt={pictureAlt(tile, picture)} />
            ))}
          </div>
        )}
      </div>
    </div>
  );
}

/** A photograph with its caption; it leads to the picture itself, which a script opens in place. */
function Plate({
  root,
  picture,
  alt,
  large = false,
}: {
  readonly root: string;
  readonly picture: Picture;
  readonly alt: string;
  readonly large?: boolean;
}): VNode {
  const caption = captions[picture.role];
  return (
    <figure class="plate">
      <a class="enlarge" href={root + (largestFile(picture)?.url ?? "")}>
        <Photograph
          root={root}
          picture={picture}
          alt={alt}
          sizes={large ? "(min-width: 60rem) 50vw, 100vw" : "(min-width: 60rem) 16vw, 33vw"}
          turn={large ? "first" : "late"}
        />
      </a>
      {caption && <figcaption>{caption}</figcaption>}
    </figure>
  );
}
