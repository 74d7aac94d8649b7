/**
 * Share of the normal value left at an angle, for coated glass known by its normal values only:
 * 1 - a x^alpha - b x^beta - c x^gamma with x = i/90, a = 8, b = 0.25/q, c = 1 - a - b,
 * alpha = 5.2 + 0.7 q, beta = 2, gamma = 5.26 + 0.06 p + (0.73 + 0.04 p) q.
 * Karlsson & Roos (2000), "Modelling the angular behaviour of the total solar energy transmittance
 * of windows", Solar Energy 69(4), 321-329 (constants from memory). Four panes are past the paper's
 * range: from q 4.5 on the formula dips below zero near grazing, by 0.026 at most, and is held at 0.
 * @param incidence degrees, 0 to 90 @param panes 1 to 4 @param q 1 to 10, 4 for uncoated glass
 */
export function coatedFactor(incidence: number, panes: number, q: number): number {
  const x = incidence / 90;
  const a = 8;
  const b = 0.25 / q;
  const c = 1 - a - b;
  const alpha = 5.2 + 0.7 * q;
  const gamma = 5.26 + 0.06 * panes + (0.73 + 0.04 * panes) * q;
  return Math.max(0, 1 - a * x ** alpha - b * x * x - c * x ** gamma);
}
