/** What a laboratory found, and exactly what that covers. */
import type { VNode } from "preact";
import type { LeachTest } from "../../src/records/leach-test.ts";
import { formatDay, listed } from "../words/english/numbers.ts";

export function LeachTests({ tests }: { readonly tests: readonly LeachTest[] }): VNode | null {
  if (tests.length === 0) return null;
  return (
    <section class="leach-tests" id="leach-tests">
      <h2>Leach {tests.length === 1 ? "test" : "tests"}</h2>
      {tests.map((test) => (
        <Test test={test} />
      ))}
      <p class="quiet measure">{whatItCovers}</p>
    </section>
  );
}

/** Nothing wider than the piece that was tested. */
export const whatItCovers =
  "A test covers the ware that was tested, from the firing that it came from, and the elements named. It says nothing of other ware, of another firing, of thicker or thinner coats, of this glaze over or under another, or of other elements. It lifts no caution on this page. Limits differ by country and by the kind of ware: ask which apply where it is sold or used.";

function Test({ test }: { readonly test: LeachTest }): VNode {
  const { found, report } = test;
  return (
    <div>
      <p class="measure">{testSentence(test)}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">Element</th>
            <th scope="col">Came off</th>
          </tr>
        </thead>
        <tbody>
          {found.map((figure) => (
            <tr>
              <th scope="row">{figure.element}</th>
              <td>{figureWords(figure)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {report && <p class="quiet measure">Report: {report}</p>}
    </div>
  );
}

/** `A mug, fired in g-1, tested by ISO 6486-1 for lead and cadmium. Brackwater, 2 June 2026.` */
export function testSentence({ on, laboratory, method, ware, fired, found }: LeachTest): string {
  const elements = listed(found.map(({ element }) => element));
  return `Tested for ${elements} by ${method}: ${ware}; fired: ${fired}. ${laboratory}, report of ${formatDay(on)}.`;
}

function figureWords({ amount, below, unit }: LeachTest["found"][number]): string {
  return amount === undefined ? `less than ${below} ${unit}` : `${amount} ${unit}`;
}
