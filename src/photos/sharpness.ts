/** A picture in shades of grey, eight bits each, row by row. */
export interface Grey {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/*
 * The variance of the Laplacian tells sharp from blurred (J.L. Pech-Pacheco and others, Diatom
 * autofocusing in brightfield microscopy, ICPR 2000). Two cares are ours: it is taken in blocks and
 * relative to the block's own contrast, since a glossy tile is smooth for the most part and only
 * its edges can be sharp; and what the blocks without contrast have of it counts as noise.
 */
const blockWidth = 24;
/** Standard deviation, in codes, from which a block holds something that could be sharp. */
const leastContrast = 10;
const sharpRatio = 0.02;
/** Noise differs between blocks; so much of its middle value is taken off. */
const noiseMargin = 1.5;
/** With fewer blocks of any contrast there is nothing to judge by. */
const leastBlocks = 4;

/** Whether no edge in the picture is sharp. A picture without any edge is not called blurred. */
export function isBlurred(grey: Grey): boolean {
  const blocks = measureBlocks(grey);
  const hasContrast = (block: Block) => block.variance >= leastContrast ** 2;
  const quiet = blocks.filter((block) => !hasContrast(block)).map((block) => block.laplacian);
  const noise = noiseMargin * quantile(quiet, 0.5);
  const ratios = blocks
    .filter(hasContrast)
    .map((block) => (block.laplacian - noise) / block.variance);
  return ratios.length >= leastBlocks && quantile(ratios, 0.9) < sharpRatio;
}

interface Block {
  readonly variance: number;
  readonly laplacian: number;
}

/** Every second block, as on a draughtboard, tells as much in half the time. */
function measureBlocks(grey: Grey): Block[] {
  const blocks: Block[] = [];
  for (let top = 1, row = 0; top + blockWidth < grey.height; top += blockWidth, row++) {
    for (
      let left = 1 + (row % 2) * blockWidth;
      left + blockWidth < grey.width;
      left += 2 * blockWidth
    ) {
      blocks.push(measureBlock(grey, left, top));
    }
  }
  return blocks;
}

function measureBlock({ data, width }: Grey, left: number, top: number): Block {
  let [sum, squares, laplacians, laplacianSquares] = [0, 0, 0, 0];
  for (let y = top; y < top + blockWidth; y++) {
    for (let at = y * width + left; at < y * width + left + blockWidth; at++) {
      const value = data[at] ?? 0;
      const beside = (data[at - 1] ?? 0) + (data[at + 1] ?? 0);
      const laplacian = beside + (data[at - width] ?? 0) + (data[at + width] ?? 0) - 4 * value;
      sum += value;
      squares += value * value;
      laplacians += laplacian;
      laplacianSquares += laplacian * laplacian;
    }
  }
  const count = blockWidth * blockWidth;
  return {
    variance: squares / count - (sum / count) ** 2,
    laplacian: laplacianSquares / count - (laplacians / count) ** 2,
  };
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(share * (sorted.length - 1))] ?? 0;
}
