/**
 * What a mixer looks for first, each figure beside the studio's own glazes that came out gloss,
 * satin, matte, dry or crazed: the tiles first, what is published as a second opinion.
 */
import type { VNode } from "preact";
import type { GlazeTold } from "../../src/catalogue/glazes.ts";
import type { Company, Outcome, PlacedGlaze } from "../../src/catalogue/mixing/companies.ts";
import type { MixFigure } from "../../src/chemistry/mix-figures.ts";
import { mixFigures, mixFiguresOf } from "../../src/chemistry/mix-figures.ts";
import {
  companyName,
  figureNames,
  figureOf,
  placeWords,
  restsOnWords,
  seenOutcomes,
} from "../words/mixing/company.ts";
import { secondOpinion } from "../words/mixing/second-opinion.ts";
import { CompanyLine } from "./company-line.tsx";
import { nearestGlazes } from "./nearest-glazes.ts";

interface AmongOthersProps {
  readonly root: string;
  readonly glaze: GlazeTold;
  /** Those that it may be looked for in, the largest first. */
  readonly companies: readonly Company[];
}

export function AmongOthers({ root, glaze, companies }: AmongOthersProps): VNode | null {
  if (glaze.kind !== "glaze" || !glaze.chemistry) return null;
  const [first, ...more] = companies;
  return (
    <section class="among" id="among">
      <h2>Among the glazes here</h2>
      {first ? (
        <InCompany root={root} glaze={glaze} company={first} most={10} />
      ) : (
        <p class="empty">
          No mixed glaze has been fired alone, to a cone that this one is for, and its surface
          recorded. A tile with one mixed glaze alone, and surface: in its result, puts that glaze
          here with its figures.
        </p>
      )}
      {!first && <BareFigures glaze={glaze} />}
      {more.slice(0, comparedToo).map((company, i) => (
        <details>
          <summary>At {companyName(company)}</summary>
          <InCompany
            root={root}
            glaze={glaze}
            company={company}
            most={i === 0 && company.glazes.length <= fewGlazes ? fewGlazes : 0}
          />
        </details>
      ))}
      {more
        .slice(comparedToo)
        .filter(({ glazes }) => glazes.some((placed) => placed.glaze.id === glaze.id))
        .map((company) => (
          <p>{ownWords(glaze, company)}</p>
        ))}
    </section>
  );
}

/** A second company is drawn as well where it is so small; of all others the words alone tell. */
const fewGlazes = 8;

/** Besides the largest, so many companies get figures; the others only what came out. */
const comparedToo = 3;

interface InCompanyProps {
  readonly root: string;
  readonly glaze: GlazeTold;
  readonly company: Company;
  /** So many of its glazes are drawn, those nearest to this one. */
  readonly most: number;
}

const order: readonly Outcome[] = ["gloss", "satin", "matte", "dry", "crazed"];

function InCompany({ root, glaze, company, most }: InCompanyProps): VNode {
  const { glazes } = company;
  const numbered = inOrder(nearestGlazes(glaze, glazes, most));
  const own = glazes.find((placed) => placed.glaze.id === glaze.id);
  const shown = order.filter((outcome) => glazes.some((placed) => hasCome(placed, outcome)));
  const part = numbered.length > 0 && numbered.length < glazes.length;
  return (
    <>
      <p>{ownWords(glaze, company)}</p>
      <p class="quiet">
        {restsOnWords(company)}
        {part && ` Drawn are the ${numbered.length} that come nearest to it in these figures.`}
      </p>
      {mixFigures.map((figure) => (
        <OneFigure {...{ figure, glaze, all: glazes, numbered, shown, own }} />
      ))}
      {numbered.length > 0 && <CompanyTable root={root} numbered={numbered} />}
    </>
  );
}

/** What its own tiles say of a glaze in a company. */
function ownWords({ id, name }: GlazeTold, company: Company): string {
  const own = company.glazes.find((placed) => placed.glaze.id === id);
  return own
    ? `On the tiles here ${name} came out ${seenOutcomes(own.seen)} at ${companyName(company)}.`
    : `No tile here shows how ${name} comes out at ${companyName(company)}: these are the others.`;
}

interface OneFigureProps {
  readonly figure: MixFigure;
  readonly glaze: GlazeTold;
  readonly all: readonly PlacedGlaze[];
  /** Those that are drawn. */
  readonly numbered: readonly PlacedGlaze[];
  readonly shown: readonly Outcome[];
  readonly own: PlacedGlaze | undefined;
}

/** What is worth seeing apart: less than this is no difference between two glazes. */
const least: Readonly<Record<MixFigure, number>> = {
  silicaToAlumina: 2,
  alkaliToEarth: 0.2,
  boron: 0.2,
};

function OneFigure({ figure, glaze, all, numbered, shown, own }: OneFigureProps): VNode {
  const here = glaze.chemistry ? mixFiguresOf(glaze.chemistry)[figure] : null;
  const others = all.filter((placed) => placed.glaze.id !== glaze.id);
  const rows = shown.map((outcome) => ({ name: outcome, marks: marksOf(outcome) }));
  function marksOf(outcome: Outcome) {
    return numbered.flatMap((placed, i) => {
      const value = placed.figures[figure];
      if (value === null || !hasCome(placed, outcome)) return [];
      const isThis = placed.glaze.id === glaze.id;
      return [{ label: String(i + 1), value, colour: placed.colour, isThis }];
    });
  }
  const figures = [here ?? [], ...rows.map(({ marks }) => marks.map(({ value }) => value))].flat();
  const hasMarks = figures.some((value) => value > 0);
  return (
    <div class="one-figure">
      <h3>
        {figureNames[figure]}:{" "}
        <span class="figures">{here === null ? "not known" : figureOf(figure, here)}</span>
      </h3>
      {hasMarks && <CompanyLine rows={rows} here={here} least={least[figure]} name={glaze.name} />}
      <div class="told">
        {here !== null && <p>{placeWords(figure, here, others, shown)}</p>}
        <p class="quiet">{secondOpinion(figure, here, own?.seen ?? [])}</p>
      </div>
    </div>
  );
}

function BareFigures({ glaze }: { readonly glaze: GlazeTold }): VNode | null {
  if (!glaze.chemistry) return null;
  const figures = mixFiguresOf(glaze.chemistry);
  return (
    <>
      {mixFigures.map((figure) => {
        const value = figures[figure];
        return (
          <p>
            {figureNames[figure]}:{" "}
            <span class="figures">{value === null ? "not known" : figureOf(figure, value)}</span>.{" "}
            <span class="quiet">{secondOpinion(figure, value, [])}</span>
          </p>
        );
      })}
    </>
  );
}

function CompanyTable(props: {
  readonly root: string;
  readonly numbered: readonly PlacedGlaze[];
}): VNode {
  return (
    <details class="company-table">
      <summary>The glazes by their numbers</summary>
      <div class="scrolls">
        <table>
          <thead>
            <tr>
              <th scope="col">No.</th>
              <th scope="col">Glaze</th>
              {mixFigures.map((figure) => (
                <th scope="col">{figureNames[figure]}</th>
              ))}
              <th scope="col">Came out, by tile</th>
            </tr>
          </thead>
          <tbody>
            {props.numbered.map(({ glaze, figures, seen }, i) => (
              <tr>
                <td>{i + 1}</td>
                <th scope="row">
                  <a href={props.root + glaze.url}>{glaze.name}</a>
                </th>
                {mixFigures.map((figure) => (
                  <td>{tableFigure(figure, figures[figure])}</td>
                ))}
                <td class="came-out">{seenOutcomes(seen)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

function tableFigure(figure: MixFigure, value: number | null): string {
  return value === null ? "–" : figureOf(figure, value);
}

function hasCome({ seen }: PlacedGlaze, outcome: Outcome): boolean {
  return seen.some((entry) => entry.outcome === outcome);
}

/** Numbered along the first line, so that its numbers run from left to right. */
function inOrder(glazes: readonly PlacedGlaze[]): readonly PlacedGlaze[] {
  const first = ({ figures }: PlacedGlaze) => figures.silicaToAlumina ?? Number.POSITIVE_INFINITY;
  return [...glazes].sort((a, b) => (first(a) === first(b) ? 0 : first(a) - first(b)));
}
