/**
 * The finder, as it stands before its script runs, so that nothing moves when it does: the box for
 * words, and the sentence of choices. It is shown only where scripts run.
 */
import type { VNode } from "preact";
import type { FacetName } from "../../src/terms/facets.ts";
import type { Sort } from "../../src/terms/sorts.ts";
import { finderPhrases, shortSentence, sortWords } from "../words/site/finder.ts";

export interface FinderProps {
  /** The way to the root of the site. */
  readonly root: string;
  /** What tiles here differ in, in the order of the sentence. */
  readonly facets: readonly FacetName[];
  /** Whether a colour can be asked for: some tile's was measured. */
  readonly near: boolean;
  /** What else than the code the tiles can be put in order by; the order of a colour follows from it. */
  readonly sorts: readonly Sort[];
}

export function Finder({ root, facets, near, sorts }: FinderProps): VNode {
  const first = facets.filter((name) => shortSentence.includes(name));
  const rest = facets.filter((name) => !shortSentence.includes(name));
  return (
    <div id="finder" data-root={root}>
      <WordsBox />
      <div class="sentence-place">
        <div class="sentence">
          <div class="phrases">
            <span class="begin">Tiles </span>
            <Choices of={first} />
            {near && <NearBox />}{" "}
          </div>
          {rest.length > 0 && (
            <details>
              <summary>More to choose by</summary>
              <div class="phrases">
                <Choices of={rest} />
              </div>
            </details>
          )}
        </div>
      </div>
      <button type="button" class="open-sheet">
        Narrow down
      </button>
      {sorts.length > 0 && <Order of={sorts} />}
    </div>
  );
}

/** The order of a colour is offered once one is asked for. */
function Order({ of }: { readonly of: readonly Sort[] }): VNode {
  return (
    <label class="in-order">
      <span class="lead">In order of </span>
      <select name="sort" autocomplete="off">
        {(["code", ...of] as const).map((sort) => (
          <option value={sort}>{sortWords[sort]}</option>
        ))}
        <option value="near" hidden disabled>
          {sortWords.near}
        </option>
      </select>
    </label>
  );
}

function WordsBox(): VNode {
  return (
    <search class="words-box">
      <label>
        <span>Find</span>
        <input
          type="search"
          name="words"
          placeholder="a code, a glaze, a word"
          autocomplete="off"
          enterkeyhint="search"
        />
      </label>
    </search>
  );
}

function Choices({ of }: { readonly of: readonly FacetName[] }): VNode {
  return (
    <>
      {of.map((name) => (
        <>
          <label>
            <span class="lead">{finderPhrases[name].lead} </span>
            <select name={name} aria-label={finderPhrases[name].spoken} autocomplete="off">
              <option value="">{finderPhrases[name].any}</option>
            </select>
          </label>{" "}
        </>
      ))}
    </>
  );
}

/** Its field opens the browser's own colour picker. */
function NearBox(): VNode {
  return (
    <span class="near">
      <label>
        <span class="lead">near </span>
        <span class="field">
          <input type="color" name="near" value="#808080" autocomplete="off" />
          <span class="asked" aria-hidden="true" hidden />
          <span class="asked-for">a colour</span>
        </span>
      </label>
      <button type="button" class="plain" hidden>
        clear<span class="unseen"> the colour</span>
      </button>
    </span>
  );
}
