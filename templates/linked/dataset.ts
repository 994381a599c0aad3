/** The data of the catalogue, for whoever looks for data sets. */
import type { DataDownload, Dataset } from "schema-dts";
import type { Frame } from "../parts/frame.ts";
import { citation } from "../words/site/data.ts";
import { addressOf } from "./addresses.ts";
import { studioOf } from "./things.ts";

/** A file of the data. */
interface Download {
  readonly name: string;
  /** Relative to the root. */
  readonly url: string;
  readonly mediaType: string;
}

interface Told {
  readonly title: string;
  readonly description: string;
  /** Where it is published; null where nobody says. */
  readonly address: string | null;
  /** Those that hold all tables, or list them all. */
  readonly whole: readonly Download[];
  readonly json: readonly { readonly file: Download }[];
}

/**
 * The data with its licence, where that is known, and whom to credit. Of its files the page names more:
 * each table alone.
 */
export function dataset(frame: Frame, told: Told): Exclude<Dataset, string> {
  const known = frame.licence?.known;
  const files = [...told.whole, ...told.json.map(({ file }) => file)];
  return {
    "@type": "Dataset",
    url: addressOf(frame, frame.path),
    name: told.title,
    description: told.description,
    creator: studioOf(frame),
    creditText: citation(frame.studio, told.title, told.address),
    ...(known && { license: known.address }),
    distribution: files.map((file) => download(frame, file)),
  };
}

function download(frame: Frame, { name, url, mediaType }: Download): Exclude<DataDownload, string> {
  return {
    "@type": "DataDownload",
    name,
    contentUrl: addressOf(frame, url),
    encodingFormat: mediaType,
  };
}
