/**
 * Solves A X = B in place by elimination without pivoting: X replaces B. Meant for radiosity
 * matrices, whose diagonal outweighs each row (Golub & Van Loan, Matrix Computations, 4th ed.
 * 2013, section 4.1.1: no pivoting is needed then).
 * @param a n x n row by row; overwritten
 * @param b n x m row by row; overwritten by X
 */
export function solveInPlace(a: Float64Array, b: Float64Array, n: number, m: number): void {
  for (let k = 0; k < n; k++) {
    const pivot = k * n;
    const inverse = 1 / a[pivot + k];
    for (let i = k + 1; i < n; i++) {
      const row = i * n;
      const factor = a[row + k] * inverse;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) a[row + j] -= factor * a[pivot + j];
      for (let c = 0; c < m; c++) b[i * m + c] -= factor * b[k * m + c];
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    const inverse = 1 / a[i * n + i];
    for (let c = 0; c < m; c++) {
      let sum = b[i * m + c];
      for (let j = i + 1; j < n; j++) sum -= a[i * n + j] * b[j * m + c];
      b[i * m + c] = sum * inverse;
    }
  }
}
