/** Every rule an archive is checked by. */
import type { Archive, Firing, Tile } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import { type Check, type Extra, type Finding, type Rule, toProblem } from "./check.ts";
import { longWaiting } from "./long-waiting.ts";
import { accentUnseen } from "./rules/accent-unseen.ts";
import { analysisDoubtful } from "./rules/analysis-doubtful.ts";
import { blendInACircle } from "./rules/blend-in-a-circle.ts";
import { codeOfAnotherSet } from "./rules/code-of-another-set.ts";
import { codeReservedTwice } from "./rules/code-reserved-twice.ts";
import { controlMissing } from "./rules/control-missing.ts";
import { coolerThanRange } from "./rules/cooler-than-range.ts";
import { datesBackwards } from "./rules/dates-backwards.ts";
import { firedFarOverRange } from "./rules/fired-far-over-range.ts";
import { formerCodeTaken } from "./rules/former-code-taken.ts";
import { glazeListedAnyway } from "./rules/glaze-listed-anyway.ts";
import { glazeWithoutChemistry } from "./rules/glaze-without-chemistry.ts";
import { greyCardUseless } from "./rules/grey-card-useless.ts";
import { hotterThanRange } from "./rules/hotter-than-range.ts";
import { licenceUnread } from "./rules/licence-unread.ts";
import { lightOverDark } from "./rules/light-over-dark.ts";
import { linkGuessable } from "./rules/link-guessable.ts";
import { linkOfListedSet } from "./rules/link-of-listed-set.ts";
import { logDoubtful } from "./rules/log-doubtful.ts";
import { logUnusable } from "./rules/log-unusable.ts";
import { materialUnknownInside } from "./rules/material-unknown-inside.ts";
import { materialUnreadable } from "./rules/material-unreadable.ts";
import { mayMelt } from "./rules/may-melt.ts";
import { nameInWords } from "./rules/name-in-words.ts";
import { noughtMistaken } from "./rules/nought-mistaken.ts";
import { onglazeTooEarly } from "./rules/onglaze-too-early.ts";
import { overNotBeneath } from "./rules/over-not-beneath.ts";
import { partOfNameInWords } from "./rules/part-of-name-in-words.ts";
import { pictureBlurred } from "./rules/picture-blurred.ts";
import { pictureBurntOut } from "./rules/picture-burnt-out.ts";
import { pictureDark } from "./rules/picture-dark.ts";
import { pictureSmall } from "./rules/picture-small.ts";
import { pictureWithNotes } from "./rules/picture-with-notes.ts";
import { pictureWithPlace } from "./rules/picture-with-place.ts";
import { programmeTooHot } from "./rules/programme-too-hot.ts";
import { reclaimTooHot } from "./rules/reclaim-too-hot.ts";
import { resistNotPeeled } from "./rules/resist-not-peeled.ts";
import { resultAfterNothing } from "./rules/result-after-nothing.ts";
import { resultOfWhichFiring } from "./rules/result-of-which-firing.ts";
import { resultWithoutPhotograph } from "./rules/result-without-photograph.ts";
import { runsOff } from "./rules/runs-off.ts";
import { scheduleFault } from "./rules/schedule-fault.ts";
import { setEndsEarly } from "./rules/set-ends-early.ts";
import { storyDiffers } from "./rules/story-differs.ts";
import { typicalAnalysis } from "./rules/typical-analysis.ts";
import { unlistedWithoutLink } from "./rules/unlisted-without-link.ts";
import { unusablePicture } from "./rules/unusable-picture.ts";
import { wetOnWet } from "./rules/wet-on-wet.ts";
import { witnessContradicts } from "./rules/witness-contradicts.ts";
import { strayPicture } from "./stray-picture.ts";

/**
 * Errors first, what can hurt someone before all; then warnings, practice notes last: among them
 * what can ruin a shelf first.
 */
export const rules: readonly Rule[] = [
  mayMelt,
  programmeTooHot,
  pictureWithPlace,
  unlistedWithoutLink,
  linkOfListedSet,
  linkGuessable,
  glazeListedAnyway,
  nameInWords,
  datesBackwards,
  setEndsEarly,
  overNotBeneath,
  resultWithoutPhotograph,
  resultAfterNothing,
  resultOfWhichFiring,
  unusablePicture,
  blendInACircle,
  materialUnreadable,
  formerCodeTaken,
  codeReservedTwice,
  scheduleFault,
  logUnusable,
  accentUnseen,

  partOfNameInWords,
  codeOfAnotherSet,
  controlMissing,
  materialUnknownInside,
  analysisDoubtful,
  glazeWithoutChemistry,
  typicalAnalysis,
  pictureWithNotes,
  pictureSmall,
  pictureBlurred,
  pictureDark,
  pictureBurntOut,
  greyCardUseless,
  noughtMistaken,
  storyDiffers,
  witnessContradicts,
  logDoubtful,
  licenceUnread,

  firedFarOverRange,
  runsOff,
  reclaimTooHot,
  hotterThanRange,
  resistNotPeeled,
  onglazeTooEarly,
  wetOnWet,
  coolerThanRange,
  lightOverDark,
];

/** Every check, those of the day and of stray pictures included: what the reference lists. */
export const checks: readonly Check[] = [...rules, longWaiting, strayPicture];

/**
 * Checks a whole archive.
 *
 * @param extra what other rooms found out about it
 * @returns every problem, in the order of `rules`
 */
export function runChecks(archive: Archive, extra: Extra): readonly Problem[] {
  return rules.flatMap((rule) => runRule(rule, archive, extra));
}

/** Checks one tile by the rules that are about a tile, as a check of the whole archive would. */
export function checkTile(archive: Archive, tile: Tile, extra: Extra): readonly Problem[] {
  return rules.flatMap((rule) =>
    rule.of === "tile"
      ? rule.find(archive, tile, extra).map((finding) => toProblem(rule, finding, tile.file))
      : [],
  );
}

/** Checks one firing by the rules that are about a firing. */
export function checkFiring(archive: Archive, firing: Firing, extra: Extra): readonly Problem[] {
  return rules.flatMap((rule) =>
    rule.of === "firing"
      ? rule.find(archive, firing, extra).map((finding) => toProblem(rule, finding, firing.file))
      : [],
  );
}

function runRule(rule: Rule, archive: Archive, extra: Extra): readonly Problem[] {
  switch (rule.of) {
    case "archive":
      return rule.find(archive, extra).map((finding) => toProblem(rule, finding, finding.file));
    case "tile":
      return runOnEach(rule, archive.tiles, (tile) => rule.find(archive, tile, extra));
    case "glaze":
      return runOnEach(rule, archive.glazes, (glaze) => rule.find(archive, glaze, extra));
    case "material":
      return runOnEach(rule, archive.materials, (material) => rule.find(archive, material, extra));
    case "firing":
      return runOnEach(rule, archive.firings, (firing) => rule.find(archive, firing, extra));
    case "set":
      return runOnEach(rule, archive.sets, (set) => rule.find(archive, set, extra));
  }
}

function runOnEach<R extends { readonly file: string }>(
  check: Check,
  records: ReadonlyMap<string, R>,
  find: (record: R) => readonly Finding[],
): readonly Problem[] {
  return [...records.values()].flatMap((record) =>
    find(record).map((finding) => toProblem(check, finding, record.file)),
  );
}
