/** Finds, in a page, the labels of charts that are on a line, on one another, or not upright. */

/**
 * Runs in a page. What is cut off by a scrolling box is not seen, and a mark's own label is on the
 * mark, which covers what is behind it.
 *
 * @param charts a selector of the charts to look at
 */
export function findLabelsOnThings(charts: string): readonly string[] {
  interface Box {
    left: number;
    right: number;
    top: number;
    bottom: number;
  }
  const holds = ({ left, right, top, bottom }: Box, { x, y }: DOMPoint) =>
    x > left + 1 && x < right - 1 && y > top + 1 && y < bottom - 1;
  const meet = (a: Box, b: Box) =>
    a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1;
  /** As high as its letters, not as its line. */
  const boxOf = (text: SVGTextElement): Box => {
    const { left, right, top, bottom } = text.getBoundingClientRect();
    const half = Number.parseFloat(getComputedStyle(text).fontSize) / 2;
    const middle = (top + bottom) / 2;
    return {
      left,
      right,
      top: Math.max(top, middle - half),
      bottom: Math.min(bottom, middle + half),
    };
  };
  const isLine = (drawn: SVGGeometryElement) => {
    const { fill, stroke } = getComputedStyle(drawn);
    return (
      drawn.checkVisibility() &&
      drawn.closest("defs, .mark") === null &&
      stroke !== "none" &&
      (fill === "none" || drawn.tagName === "line")
    );
  };
  const pointsOf = (line: SVGGeometryElement): readonly DOMPoint[] => {
    const [length, matrix] = [line.getTotalLength(), line.getScreenCTM()];
    const window = line.closest(".scroll")?.getBoundingClientRect();
    if (length === 0 || matrix === null) return [];
    return Array.from({ length: 401 }, (_, i) => {
      const { x, y } = line.getPointAtLength((i / 400) * length);
      return new DOMPoint(x, y).matrixTransform(matrix);
    }).filter((point) => !window || holds(window, point));
  };
  return [...document.querySelectorAll(charts)].flatMap((chart) => {
    const labels = [...chart.querySelectorAll("text")]
      .filter((text) => text.textContent !== "" && text.checkVisibility())
      .map((text) => ({ text, words: text.textContent, box: boxOf(text) }));
    const free = labels.filter(({ text }) => text.closest(".mark") === null);
    const lines = [...chart.querySelectorAll<SVGGeometryElement>("line, path")].filter(isLine);
    return [
      ...labels
        .filter(({ text }) => /rotate/u.test(text.getAttribute("transform") ?? ""))
        .map(({ words }) => `${words} is not upright`),
      ...labels.flatMap((a, i) =>
        labels
          .slice(i + 1)
          .filter((b) => meet(a.box, b.box))
          .map((b) => `${a.words} is on ${b.words}`),
      ),
      ...lines.flatMap((line) => {
        const points = pointsOf(line);
        return free
          .filter(({ box }) => points.some((point) => holds(box, point)))
          .map(({ words }) => `${words} is on a line`);
      }),
    ];
  });
}
