/** The checks that a photograph must be opened for: what a build learns as it prepares them. */
import type { Archive } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import type { TypedCommand } from "../terms/typed-command.ts";
import { type PictureInspection, toProblem } from "./check.ts";
import { greyCardUseless } from "./rules/grey-card-useless.ts";
import { pictureBlurred } from "./rules/picture-blurred.ts";
import { pictureBurntOut } from "./rules/picture-burnt-out.ts";
import { pictureDark } from "./rules/picture-dark.ts";
import { pictureSmall } from "./rules/picture-small.ts";
import { unusablePicture } from "./rules/unusable-picture.ts";

const rules = [
  unusablePicture,
  pictureSmall,
  pictureBlurred,
  pictureDark,
  pictureBurntOut,
  greyCardUseless,
];

/** What is wrong with photographs that were opened, by the rules that `check` goes by. */
export function checkOpenedPictures(
  archive: Archive,
  pictures: ReadonlyMap<string, PictureInspection>,
  asTyped: TypedCommand,
): readonly Problem[] {
  const extra = { pictures, withoutChemistry: new Map(), heats: new Map(), asTyped };
  return rules.flatMap((rule) =>
    rule.find(archive, extra).map((finding) => toProblem(rule, finding, finding.file)),
  );
}
