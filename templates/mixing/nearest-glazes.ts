/** Which glazes of a company are drawn where there are too many to tell apart. */

import type { GlazeTold } from "../../src/catalogue/glazes.ts";
import type { PlacedGlaze } from "../../src/catalogue/mixing/companies.ts";
import { mixFigures, mixFiguresOf } from "../../src/chemistry/mix-figures.ts";

/**
 * Those nearest to a glaze in all figures that both have, each figure measured by how far it runs
 * in the company; the glaze itself among them, where it is in the company.
 */
export function nearestGlazes(
  { id, chemistry }: Pick<GlazeTold, "chemistry" | "id">,
  company: readonly PlacedGlaze[],
  most: number,
): readonly PlacedGlaze[] {
  if (company.length <= most || !chemistry) return company.slice(0, most);
  const here = mixFiguresOf(chemistry);
  const runs = mixFigures.map((figure) => {
    const values = company.flatMap(({ figures }) => figures[figure] ?? []);
    return { figure, run: Math.max(...values) - Math.min(...values) };
  });
  const apart = ({ glaze, figures }: PlacedGlaze): number => {
    if (glaze.id === id) return -1;
    const differences = runs.flatMap(({ figure, run }) => {
      const [a, b] = [here[figure], figures[figure]];
      return a === null || b === null || !(run > 0) ? [] : [Math.abs(a - b) / run];
    });
    const sum = differences.reduce((total, one) => total + one, 0);
    return differences.length > 0 ? sum / differences.length : Number.POSITIVE_INFINITY;
  };
  return company
    .map((placed) => ({ placed, far: apart(placed) }))
    .sort((a, b) => (a.far === b.far ? 0 : a.far - b.far))
    .slice(0, most)
    .map(({ placed }) => placed);
}
