import { diffuseView } from '../opening/index.ts';
import type { HorizonPoint, Plane } from '../opening/index.ts';
import type { PlaneView } from '../sky/index.ts';

const none = { head: 0, sill: 0, left: 0, right: 0 };

/** What a pane flush with an open facade sees under the site's horizon. */
export function openPlaneView(plane: Plane, horizon: readonly HorizonPoint[]): PlaneView {
  const flush = {
    width: 1,
    height: 1,
    frame: none,
    setBack: 0,
    reveal: none,
    revealReflectance: 0,
  };
  const view = diffuseView(flush, plane, horizon);
  const sum = (weights: Float64Array) => weights.reduce((total, w) => total + w, 0);
  return {
    sky: sum(view.sky.weight),
    ground: sum(view.ground.weight),
    horizon: sum(view.horizon.weight),
  };
}
