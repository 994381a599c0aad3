export type Vector = readonly [number, number, number];
export type Matrix = readonly [Vector, Vector, Vector];

export function multiply(matrix: Matrix, vector: Vector): [number, number, number] {
  return [dot(matrix[0], vector), dot(matrix[1], vector), dot(matrix[2], vector)];
}

/** The matrix that does `first` and then `then`. */
export function chain(first: Matrix, then: Matrix): Matrix {
  const columns = transpose(first);
  const rows = columns.map((column) => multiply(then, column));
  return transpose(rows as unknown as Matrix);
}

export function diagonal([x, y, z]: Vector): Matrix {
  return [
    [x, 0, 0],
    [0, y, 0],
    [0, 0, z],
  ];
}

export function invert([[a, b, c], [d, e, f], [g, h, i]]: Matrix): Matrix {
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  const scale = (value: number) => value / determinant;
  return [
    [scale(e * i - f * h), scale(c * h - b * i), scale(b * f - c * e)],
    [scale(f * g - d * i), scale(a * i - c * g), scale(c * d - a * f)],
    [scale(d * h - e * g), scale(b * g - a * h), scale(a * e - b * d)],
  ];
}

function transpose([[a, b, c], [d, e, f], [g, h, i]]: Matrix): Matrix {
  return [
    [a, d, g],
    [b, e, h],
    [c, f, i],
  ];
}

function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
