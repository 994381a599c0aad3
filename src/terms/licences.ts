/**
 * Licences that archives are published under, and how people write them. Ids and names are those of the
 * SPDX licence list 3.28.0 (spdx.org/licenses), which tests/terms/licences.test.ts holds them to.
 */

export interface Licence {
  /** Its id in the SPDX licence list. */
  readonly id: string;
  /** Its full name there. */
  readonly name: string;
  /** Where it is told for people: of Creative Commons the page that sums it up and leads to its whole text. */
  readonly address: string;
}

/** A licence, and what else it is called. */
interface Entry {
  readonly licence: Licence;
  readonly also: readonly string[];
}

/** By their letters, in the order that ids and addresses have them in. */
const conditions: Readonly<Record<string, string>> = {
  by: "Attribution",
  "by-nc": "Attribution Non Commercial",
  "by-nc-nd": "Attribution Non Commercial No Derivatives",
  "by-nc-sa": "Attribution Non Commercial Share Alike",
  "by-nd": "Attribution No Derivatives",
  "by-sa": "Attribution Share Alike",
};

/** The versions, and what each calls the one that holds in every country. */
const versions: Readonly<Record<string, string>> = {
  "2.0": "Generic",
  "2.5": "Generic",
  "3.0": "Unported",
  "4.0": "International",
};

const ofCreativeCommons: readonly Entry[] = Object.entries(conditions).flatMap(([letters, said]) =>
  Object.entries(versions).map(([version, reach]) => ({
    licence: {
      id: `CC-${letters.toUpperCase()}-${version}`,
      name: `Creative Commons ${said} ${version} ${reach}`,
      address: `https://creativecommons.org/licenses/${letters}/${version}/`,
    },
    also: [
      `${said} ${version} ${reach}`,
      `Creative Commons ${said} ${version}`,
      ...["CC", "Creative Commons", "Creative Commons CC"].flatMap((owner) => [
        `${owner} ${letters} ${version}`,
        `${owner} ${letters} ${version} ${reach}`,
      ]),
    ],
  })),
);

/** Each of these has one version alone, so its name without the version means that one. */
const others: readonly Entry[] = [
  {
    licence: {
      id: "CC0-1.0",
      name: "Creative Commons Zero v1.0 Universal",
      address: "https://creativecommons.org/publicdomain/zero/1.0/",
    },
    also: [
      ...["CC0", "CC0 1.0 Universal", "CC Zero", "CC Zero 1.0", "Creative Commons CC0"],
      ...[
        "Creative Commons CC0 1.0",
        "Creative Commons CC0 1.0 Universal",
        "Creative Commons Zero",
      ],
    ],
  },
  {
    licence: {
      id: "ODbL-1.0",
      name: "Open Data Commons Open Database License v1.0",
      address: "https://opendatacommons.org/licenses/odbl/1-0/",
    },
    also: ["ODbL", "Open Database License", "Open Database License 1.0"],
  },
  {
    licence: {
      id: "ODC-By-1.0",
      name: "Open Data Commons Attribution License v1.0",
      address: "https://opendatacommons.org/licenses/by/1-0/",
    },
    also: ["ODC-By", "Open Data Commons Attribution License"],
  },
  {
    licence: {
      id: "PDDL-1.0",
      name: "Open Data Commons Public Domain Dedication & License 1.0",
      address: "https://opendatacommons.org/licenses/pddl/1-0/",
    },
    also: ["PDDL", "ODC-PDDL-1.0", "Open Data Commons Public Domain Dedication and License 1.0"],
  },
];

const entries: readonly Entry[] = [...ofCreativeCommons, ...others];

const bySpelling: ReadonlyMap<string, Licence> = new Map(
  entries.flatMap(({ licence, also }) =>
    [licence.id, licence.name, ...addressesOf(licence), ...also].map(
      (written) => [spell(written), licence] as const,
    ),
  ),
);

/** Longer words are more than the name of a licence. */
const longest = 200;

/**
 * The licence that somebody's words name, where they name one and say nothing else: “CC BY 4.0”,
 * “CC-BY-4.0”, “Creative Commons Attribution 4.0 International (CC BY 4.0)”, its web address.
 *
 * @returns undefined where they say more than that, or name no licence and version that is known: such
 *   words mean what they say, and nothing is made of them
 */
export function readLicence(words: string): Licence | undefined {
  if (words.length > longest) return undefined;
  const found = new Set(piecesOf(words).map((piece) => bySpelling.get(spell(piece))));
  const [only] = found;
  return found.size === 1 ? only : undefined;
}

/**
 * Whether words are those of a licence and of nothing else, and yet no licence can be read in them, as in
 * “CC BY”, which does not say its version.
 */
export function isLicenceUnread(words: string): boolean {
  if (words.length > longest || readLicence(words) !== undefined) return false;
  const said = words.toLowerCase().match(/[\p{L}\d.]+/gu) ?? [];
  return said.some((word) => tellTale.test(word)) && said.every((word) => ofLicences.test(word));
}

const tellTale = /^(?:cc0?|ccby|creative|odbl|odc|pddl)$/u;

const ofLicences =
  /^(?:cc0?|ccby|by|nc|nd|sa|creative|commons|zero|attribution|non|noncommercial|commercial|no|noderivs|noderivatives|derivs|derivatives|share|sharealike|alike|international|unported|generic|universal|public|domain|dedication|open|data|database|odbl|odc|pddl|licen[cs]e|and|version|v?\d+(?:\.\d+)*|\.)$/u;

/** The names and addresses in the words, each by itself: one may be in brackets behind another. */
function piecesOf(words: string): readonly string[] {
  return words
    .replace(/https?:\/\//giu, ",")
    .split(/[(),:;<>[\]]|\s(?=(?:www\.)?(?:creative|opendata)commons\.org\/)/iu)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== "" && piece !== ".");
}

/** The ways to write the address of a licence, without what all of them begin with. */
function addressesOf({ address }: Licence): readonly string[] {
  const page = address.replace("https://", "");
  return [page, `www.${page}`]
    .flatMap((one) => [one, one.replace("/1-0/", "/1.0/")])
    .flatMap((one) => ["", "deed", "deed.en", "legalcode", "legalcode.en"].map((end) => one + end));
}

/**
 * Words as they are compared: without regard to capitals, spaces and hyphens, to “v” before a version,
 * and to “licence” behind a name. Whatever else is in them keeps them from being that name.
 */
function spell(words: string): string {
  return words
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\s_\u2010-\u2015-]+/gu, " ")
    .replace(/(?: public)? licen[cs]e(?=[. ]|$)/gu, "")
    .replace(/ v(?:ersion )?(?=\d)/gu, " ")
    .replace(/[./]$/u, "")
    .replaceAll(" ", "");
}
