export { compileOpening } from './openingShade.ts';
export { diffuseView } from './diffuseView.ts';
export { validateOpening } from './validate.ts';
export { horizonAltitude } from '../sky/index.ts';
export type {
  DiffuseView,
  DirectionSet,
  Fin,
  HorizonPoint,
  OpeningGeometry,
  OpeningShade,
  Overhang,
  Plane,
  Sides,
} from './types.ts';
