/** Intervals of the tables over the cosine of the incidence angle: value k stands at cos = k / 128. */
export const COS_INTERVALS = 128;

/** One clear or body-tinted pane, for tracing through the stack. */
export interface ClearPane {
  /** m */
  thickness: number;
  /** Extinction coefficient, 1/m (4 water white to 32 greenish; Duffie & Beckman). */
  extinction: number;
  /** Refractive index, 1.526 for soda-lime glass. */
  refractiveIndex: number;
}

/** How the glazing's properties fall with the angle of incidence. */
export type AngularModel =
  /** Coated glass known by its normal values only: Karlsson & Roos (2000), q 1 to 10. */
  | { kind: 'coated'; q: number }
  /** Uncoated panes from outside in, traced through the stack (Duffie & Beckman, ch. 5). */
  | { kind: 'clear'; panes: ClearPane[] };

/** A glazing unit as its data sheet gives it. */
export interface Glazing {
  id: string;
  name: string;
  /** Number of panes, 1 to 4. */
  panes: number;
  /** Total solar energy transmittance at normal incidence (SHGC of the glass), EN 410. */
  g: number;
  /** Direct solar transmittance at normal incidence, EN 410. */
  solarTransmittance: number;
  /** Visible transmittance at normal incidence. */
  visibleTransmittance: number;
  /** Centre-of-glass thermal transmittance, W/m2K. */
  Ug: number;
  /** A matt pane: what passes is scattered. */
  diffusing?: boolean;
  angular: AngularModel;
  /** Source or mark: `common practice`, `from memory`, or a publication. */
  source: string;
}

/** Glazing properties by angle; tables have COS_INTERVALS + 1 values. */
export interface GlassAngular {
  g: Float64Array;
  solarTransmittance: Float64Array;
  /** Means over an evenly bright hemisphere. */
  gDiffuse: number;
  solarTransmittanceDiffuse: number;
  Ug: number;
  diffusing: boolean;
}
