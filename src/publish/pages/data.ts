/** The page of the data; none on the site of an unlisted set, which has no data files. */
import { DataPage, type FileView, type TableView } from "../../../templates/pages/data-page.tsx";
import { dataPath } from "../../../templates/parts/sections.ts";
import { dataTitle } from "../../../templates/words/site/data.ts";
import { citationPath, citedTitle } from "../citation.ts";
import { aboutOf } from "../data/about.ts";
import { jsonNames } from "../data/files.ts";
import { manifestPath, type SiteData, siteDataOf } from "../data/site-data.ts";
import { tables } from "../data/tables/all.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";

export function dataPages({ catalogue, frame }: Site): readonly Page[] {
  const { studio } = catalogue;
  if (studio.unlisted) return [];
  return [
    definePage({
      path: dataPath,
      component: DataPage,
      props: () => {
        const data = siteDataOf(catalogue);
        const file = fileFinder(data);
        return {
          frame: frame(dataPath),
          counts: {
            tiles: catalogue.tiles.length,
            glazes: catalogue.glazes.length,
            firings: catalogue.firings.length,
          },
          title: citedTitle(studio.name),
          address: aboutOf(studio).address,
          citation: citationPath,
          manifest: manifestPath,
          whole: wholeFiles(file),
          json: jsonNames.map((name) => ({
            file: file(`data/${name}.json`),
            schema: file(`data/${name}.schema.json`),
          })),
          tables: viewTables(data, file),
        };
      },
      search: () => ({ title: dataTitle, kind: "Page", words: searchWords, picture: null }),
    }),
  ];
}

const searchWords =
  "data download CSV spreadsheet JSON Parquet SQLite SQL database tables columns licence cite citation";

type FindFile = (path: string) => FileView;

/** How long each file is, where all of them were made. */
function fileFinder(data: SiteData): FindFile {
  const sums = data.measured();
  const kinds = new Map(data.entries.map(({ path, mediaType }) => [path, mediaType]));
  return (path) => ({
    name: path.slice(path.indexOf("/") + 1),
    url: path,
    mediaType: kinds.get(path) ?? "",
    bytes: sums?.get(path)?.bytes ?? null,
  });
}

function wholeFiles(file: FindFile) {
  return [
    {
      ...file("data/tilebook.sqlite"),
      words:
        "all tables as an SQLite database, with their keys, and with tables that say what each column means.",
    },
    {
      // It tells how long the others are, and is made last.
      ...file(manifestPath),
      bytes: null,
      words:
        "whose the data is, its licence, and every file with its length and its SHA-256, for programs that gather the data of many studios.",
    },
    {
      ...file("data/tables.json"),
      words: "what every table and column means, as on this page, for programs.",
    },
  ];
}

function viewTables(data: SiteData, file: FindFile): readonly TableView[] {
  const rows = new Map(data.files.map((entry) => [entry.table, entry.rows]));
  return tables.map(({ name, row, columns }) => ({
    name,
    row,
    rows: rows.get(name) ?? 0,
    files: [
      { ...file(`data/${name}.csv`), name: "CSV" },
      { ...file(`data/${name}.parquet`), name: "Parquet" },
    ],
    columns: columns.map(({ name: column, type, nullable, description, refers }) => ({
      ...{ name: column, type, nullable, description, refers },
    })),
  }));
}
