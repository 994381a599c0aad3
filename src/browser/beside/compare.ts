/** The columns: photographs, steps, lines, colours, each beside the others, with what differs marked. */
import type { Subject } from "../../publish/beside-file.ts";
import { element } from "../parts/element.ts";
import { drawCurves, shareCurves } from "./curves.ts";
import { alignSteps, type JoinedTable, joinTables, type StepRow } from "./differences.ts";
import { makePhotographs } from "./photographs.ts";
import { aspectWords, differenceSentences, tellColour } from "./words.ts";

/** What the columns are made with. */
export interface Comparing {
  readonly root: string;
  readonly scatter: number | null;
  readonly remove: (id: string) => void;
  /** The address of these glazes side by side. */
  readonly glazesOf: (subject: Subject) => string | undefined;
}

/** Everything beneath the head of the page. */
export function compare(subjects: readonly Subject[], by: Comparing): readonly HTMLElement[] {
  const rows = alignSteps(subjects);
  const tables = joinTables(subjects);
  const photographs = makePhotographs(subjects, by.root);
  const curves = shareCurves(subjects);
  const hasSteps = rows.length > 0;
  const sentences =
    hasSteps && subjects.length > 1
      ? differenceSentences(
          subjects.map(({ id }) => id),
          rows,
          tables,
        )
      : [];
  const table = element("div", { class: "compare", role: "table", "aria-label": "Side by side" });
  table.style.setProperty("--columns", String(subjects.length));
  table.append(
    heads(subjects, photographs.frames, by),
    ...(hasSteps
      ? [
          title("What was done, the bottom first"),
          ...rows.map((row, i) => stepLine(row, i, subjects)),
        ]
      : []),
    ...colourLines(subjects, by),
    ...tables.flatMap(tableLines),
  );
  return [
    ...sentences.map((words) => element("p", { class: "why measure" }, words)),
    photographs.bar,
    table,
    ...(curves.length > 0
      ? [element("h2", {}, "How the kilns went"), drawCurves(curves, by.root)]
      : []),
  ];
}

function line(
  kind: string,
  label: readonly (Node | string)[],
  cells: readonly HTMLElement[],
): HTMLElement {
  const head = element("div", { role: "rowheader", class: "label" }, ...label);
  return element("div", { role: "row", class: `compare-line ${kind}` }, head, ...cells);
}

function cell(...inside: (Node | string)[]): HTMLElement {
  return element("div", { role: "cell" }, ...inside);
}

function title(words: string): HTMLElement {
  return element(
    "div",
    { role: "row", class: "compare-title" },
    element("div", { role: "rowheader" }, words),
  );
}

function heads(
  subjects: readonly Subject[],
  frames: readonly HTMLElement[],
  by: Comparing,
): HTMLElement {
  const cells = subjects.map((subject, i) => {
    const { id, url, name, steps } = subject;
    const away = element("button", { type: "button", class: "plain" }, "take away");
    away.setAttribute("aria-label", `Take away ${id}`);
    away.addEventListener("click", () => by.remove(id));
    const glazes = by.glazesOf(subject);
    const isTile = steps.length > 0 || name !== id;
    return element(
      "div",
      { role: "columnheader" },
      ...frames.slice(i, i + 1),
      element(
        "a",
        { href: by.root + url, class: steps.length > 0 ? "code" : "names" },
        steps.length > 0 ? id : name,
      ),
      ...(isTile && steps.length > 0 ? [element("span", { class: "names" }, name)] : []),
      ...(glazes
        ? [element("a", { href: glazes, class: "quiet" }, "its glazes side by side")]
        : []),
      away,
    );
  });
  return element(
    "div",
    { role: "row", class: "compare-line compare-heads" },
    element("div", { role: "columnheader", class: "label" }),
    ...cells,
  );
}

function stepLine(
  { row, isMissing, differing, open }: StepRow,
  place: number,
  subjects: readonly Subject[],
): HTMLElement {
  const marks = [
    isMissing ? "not on all" : "",
    differing.length > 0 ? `differs: ${aspectWords(differing)}` : "",
    open.length > 0 ? `may differ: ${aspectWords(open)}` : "",
  ].filter(Boolean);
  const cells = row.map((at, i) => {
    const step = at === null ? undefined : subjects[i]?.steps[at];
    return step ? cell(step.words) : cell(element("i", { class: "quiet" }, "no such step"));
  });
  const isUnlike = isMissing || differing.length > 0;
  const kind = isUnlike ? "differs" : open.length > 0 ? "open" : "same";
  return line(
    `step ${kind}`,
    [`Step ${place + 1}`, ...marks.map((words) => element("small", {}, words))],
    cells,
  );
}

function colourLines(subjects: readonly Subject[], { scatter }: Comparing): readonly HTMLElement[] {
  const [first] = subjects;
  if (!first || subjects.every(({ colour }) => colour === null)) return [];
  const cells = subjects.map((subject) => {
    const { colour } = subject;
    if (!colour) return cell(element("i", { class: "quiet" }, "not measured"));
    const swatch = element("span", { class: "compare-swatch", "aria-hidden": "true" });
    swatch.style.background = colour.hex;
    const apart = subject === first ? "" : tellColour(subject, called(first), scatter);
    return cell(
      swatch,
      `${colour.name} `,
      element("span", { class: "code" }, colour.hex),
      element("p", { class: "quiet" }, apart),
    );
  });
  return [title("Colour"), line("plain", ["Measured in its photograph"], cells)];
}

/** A table with nothing in it on any of them is left out. */
function tableLines({ title: words, kind, rows }: JoinedTable): readonly HTMLElement[] {
  if (rows.length === 0) return [];
  const lines = rows.map(({ label, words: said, differs }) =>
    line(
      kind === "notes" ? "note" : kinds[differs],
      [...oxide(label), ...(marks[differs] ? [element("small", {}, marks[differs])] : [])],
      said.map((each) =>
        each === undefined
          ? cell(
              element(
                "i",
                { class: "quiet" },
                kind === "facts" ? "not written down" : unknown[kind],
              ),
            )
          : cell(each),
      ),
    ),
  );
  return [title(words), ...lines];
}

const kinds = { yes: "differs", maybe: "open", no: "same" } as const;
const marks = { yes: "differs", maybe: "may differ", no: "" } as const;
const unknown = { notes: "not said of it", parts: "not known" } as const;

/** A tile by its code, a glaze by its name. */
function called(subject: Subject): Subject & { readonly called: string } {
  return { ...subject, called: subject.steps.length > 0 ? subject.id : subject.name };
}

/** `SiO2` with its number beneath the line, as oxides are written. */
function oxide(label: string): readonly (Node | string)[] {
  if (!/^(?:[A-Z][a-z]?\d?)+$/u.test(label) || !/O/u.test(label)) return [label];
  return label.split(/(\d)/u).map((part) => (/^\d$/u.test(part) ? element("sub", {}, part) : part));
}
