/** The data of the catalogue, for people: every file, every table, and what each column means. */
import type { VNode } from "preact";
import { dataset } from "../linked/dataset.ts";
import { Document } from "../parts/document.tsx";
import { Explained } from "../parts/explained.tsx";
import type { Frame } from "../parts/frame.ts";
import { LicenceLine } from "../parts/licence.tsx";
import { count } from "../words/english/numbers.ts";
import {
  citation,
  csvNotes,
  type DataCounts,
  dataSentence,
  dataTitle,
  moversNote,
  moversQuery,
  moversQuestion,
  sizeWords,
  typeWords,
} from "../words/site/data.ts";

/** A file to take away. */
export interface FileView {
  readonly name: string;
  /** Relative to the root. */
  readonly url: string;
  readonly mediaType: string;
  /** Null as long as the file was not made. */
  readonly bytes: number | null;
}

export interface TableView {
  readonly name: string;
  readonly row: string;
  readonly rows: number;
  readonly files: readonly FileView[];
  readonly columns: readonly {
    readonly name: string;
    readonly type: "date" | "integer" | "real" | "text" | "yes-no";
    readonly nullable: boolean;
    readonly description: string;
    /** The table whose `id` it holds. */
    readonly refers: string | null;
  }[];
}

export interface DataPageProps {
  readonly frame: Frame;
  readonly counts: DataCounts;
  readonly title: string;
  readonly address: string | null;
  readonly citation: string;
  /** The file that tells programs of all others. */
  readonly manifest: string;
  /** Those that hold all tables, or list them all. */
  readonly whole: readonly (FileView & { readonly words: string })[];
  readonly json: readonly { readonly file: FileView; readonly schema: FileView }[];
  readonly tables: readonly TableView[];
}

export function DataPage(props: DataPageProps): VNode {
  const { frame, counts, tables } = props;
  const sentence = dataSentence(counts);
  return (
    <Document
      styles="data"
      frame={frame}
      title={dataTitle}
      summary={sentence}
      kind="entry data"
      describedBy={props.manifest}
      linked={[dataset(frame, { ...props, description: sentence })]}
    >
      <header class="opening">
        <h1>{dataTitle}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <div class="topics">
        <Terms {...props} />
        <Whole {...props} />
        <Question />
        <Spreadsheet />
        <Json {...props} />
      </div>
      <section id="tables">
        <h2>The tables</h2>
        <p class="measure">
          They are the same in every kind of file. A list is a table of its own: a tile with three
          layers has three rows in <a href="#layers">layers</a>.
        </p>
        <nav class="way-line" aria-label="Tables">
          <ul>
            {tables.map(({ name }) => (
              <li>
                <a class="code" href={`#${name}`}>
                  {name}
                </a>
              </li>
            ))}
          </ul>
        </nav>
        <div class="tables">
          {tables.map((table) => (
            <Table root={frame.root} table={table} />
          ))}
        </div>
      </section>
    </Document>
  );
}

function Terms({ frame, title, address, citation: file }: DataPageProps): VNode {
  const { root, studio, licence } = frame;
  return (
    <section>
      <h2>Whose it is</h2>
      <LicenceLine studio={studio} licence={licence} />
      <p>
        These are reports of tests: what somebody wrote down, and what was worked out from it.
        Nothing here is certified, least of all for food:{" "}
        <a href={`${root}care.html`}>what to take care of</a>. A caution goes with the glaze, so
        take the tables of cautions along. Recipes, notes in the makers’ own words and photographs
        are on the pages alone.
      </p>
      <p>
        Cite it as “{citation(studio, title, address)}”. Programs read the same in{" "}
        <a href={root + file}>{file}</a>. The data has no version and no day: say when you took it.
      </p>
    </section>
  );
}

function Whole({ frame: { root }, whole }: DataPageProps): VNode {
  return (
    <section>
      <h2>All of it in one file</h2>
      <ul class="files">
        {whole.map(({ words, ...file }) => (
          <li>
            <File root={root} file={file} />: {words}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Question(): VNode {
  return (
    <section>
      <h2>Ask it something</h2>
      <p>{moversQuestion} In SQL:</p>
      <pre class="query">{moversQuery}</pre>
      <p>
        <Explained words={moversNote} />
      </p>
    </section>
  );
}

function Spreadsheet(): VNode {
  return (
    <section>
      <h2>In a spreadsheet</h2>
      {csvNotes.map((words) => (
        <p>
          <Explained words={words} />
        </p>
      ))}
    </section>
  );
}

function Json({ frame: { root }, json }: DataPageProps): VNode {
  return (
    <section>
      <h2>As JSON</h2>
      <p>A row is an object with all its lists in it. Each file has a schema beside it.</p>
      <ul class="files">
        {json.map(({ file, schema }) => (
          <li>
            <File root={root} file={file} />, <a href={root + schema.url}>{schema.name}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}

function File({ root, file }: { readonly root: string; readonly file: FileView }): VNode {
  const { name, url, bytes } = file;
  return (
    <>
      <a href={root + url}>{name}</a>
      {bytes === null ? "" : ` ${sizeWords(bytes)}`}
    </>
  );
}

function Table({ root, table }: { readonly root: string; readonly table: TableView }): VNode {
  const { name, row, rows, files, columns } = table;
  return (
    <section class="table" id={name}>
      <h3 class="code">{name}</h3>
      <p>
        A row is <Explained words={row} />. {count(rows, "row")}:{" "}
        {files.map((file, i) => (
          <>
            {i > 0 && ", "}
            <File root={root} file={file} />
          </>
        ))}
      </p>
      <dl class="fields">
        {columns.map((column) => (
          <div>
            <dt class="code">{column.name}</dt>
            <dd>
              <Explained words={column.description} /> <i>{typeWords(column)}</i>
              {column.refers !== null && (
                <>
                  , from <a href={`#${column.refers}`}>{column.refers}</a>
                </>
              )}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
