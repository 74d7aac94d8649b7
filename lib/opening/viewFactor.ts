/**
 * Area times view factor, m2, between two rectangles in planes square to each other, their sides
 * parallel or square to the line where the planes meet: the first spans x0..x1 from that line and
 * y0..y1 along it, the second xi0..xi1 from it and eta0..eta1 along it. Symmetric in the two.
 *
 * Howell, Mengüç, Daun & Siegel, "A Catalog of Radiation Heat Transfer Configuration Factors",
 * C-15, after Gross, Spindler & Hahne (1981); the case with two whole faces and a common edge is
 * Hamilton & Morgan (1952), NACA TN 2836.
 */
export function perpendicularExchange(
  x0: number,
  x1: number,
  y0: number,
  y1: number,
  eta0: number,
  eta1: number,
  xi0: number,
  xi1: number,
): number {
  const corner = (x: number, xi: number) => {
    const r2 = x * x + xi * xi;
    return term(y1 - eta1, r2) - term(y1 - eta0, r2) - term(y0 - eta1, r2) + term(y0 - eta0, r2);
  };
  return corner(x1, xi1) - corner(x1, xi0) - corner(x0, xi1) + corner(x0, xi0);
}

/** The function G of C-15, u along the line of the planes, r2 the squared distance from it. */
function term(u: number, r2: number): number {
  const d2 = r2 + u * u;
  if (d2 === 0) return 0;
  const r = Math.sqrt(r2);
  return (u * r * Math.atan2(u, r) - ((r2 - u * u) * Math.log(d2)) / 4) / (2 * Math.PI);
}
