/**
 * Eigenvalues and eigenvectors of a small symmetric matrix by cyclic Jacobi rotations (Golub & Van
 * Loan, Matrix Computations, 4th ed. 2013, algorithm 8.5.3).
 *
 * @param a n x n symmetric matrix, row by row; overwritten
 * @returns `values` (n) and `vectors` (n x n, row by row: column k belongs to value k)
 */
export function symmetricEigen(
  a: Float64Array,
  n: number,
): { values: Float64Array; vectors: Float64Array } {
  const v = new Float64Array(n * n);
  for (let i = 0; i < n; i++) v[i * n + i] = 1;
  const size = norm(a);
  for (let sweep = 0; sweep < 60 && offDiagonal(a, n) > 1e-13 * size; sweep++) {
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) rotate(a, v, n, p, q);
    }
  }
  return { values: Float64Array.from({ length: n }, (_, i) => a[i * n + i]), vectors: v };
}

function rotate(a: Float64Array, v: Float64Array, n: number, p: number, q: number): void {
  const apq = a[p * n + q];
  if (apq === 0) return;
  const tau = (a[q * n + q] - a[p * n + p]) / (2 * apq);
  const t = (tau >= 0 ? 1 : -1) / (Math.abs(tau) + Math.sqrt(1 + tau * tau));
  const c = 1 / Math.sqrt(1 + t * t);
  const s = t * c;
  for (let k = 0; k < n; k++) {
    const kp = a[k * n + p];
    const kq = a[k * n + q];
    a[k * n + p] = c * kp - s * kq;
    a[k * n + q] = s * kp + c * kq;
  }
  for (let k = 0; k < n; k++) {
    const pk = a[p * n + k];
    const qk = a[q * n + k];
    a[p * n + k] = c * pk - s * qk;
    a[q * n + k] = s * pk + c * qk;
    const vp = v[k * n + p];
    const vq = v[k * n + q];
    v[k * n + p] = c * vp - s * vq;
    v[k * n + q] = s * vp + c * vq;
  }
}

function norm(a: Float64Array): number {
  let sum = 0;
  for (const x of a) sum += x * x;
  return Math.sqrt(sum);
}

function offDiagonal(a: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) sum += 2 * a[i * n + j] * a[i * n + j];
  }
  return Math.sqrt(sum);
}
