import { COS_INTERVALS } from '../glazing/index.ts';
import { emptyOptics } from './tables.ts';
import type { BlindOptics, FabricBlind, ShutterBlind } from './types.ts';

/** Total and direct transmittance and reflectance at one incidence angle, degrees. */
interface AngleLaw {
  direct(incidence: number): number;
  total(incidence: number): number;
  reflectance(incidence: number): number;
}

const cosDegrees = (angle: number): number => Math.cos((angle * Math.PI) / 180);

/** Falls from 1 at normal incidence to 0 at the cut-off and beyond. */
const fallTo = (cutOff: number, power: number, incidence: number): number =>
  incidence < cutOff ? Math.max(0, cosDegrees((90 * incidence) / cutOff)) ** power : 0;

/**
 * Woven roller-blind fabric by incidence angle: Kotey, Wright & Collins (2009), Determining
 * off-normal solar optical properties of roller blinds, ASHRAE Transactions 115(1); coefficients
 * from memory. Reflectance does not change with the angle in that model.
 */
function fabricLaw(fabric: FabricBlind): AngleLaw {
  const { openness, diffuseTransmittance, reflectance } = fabric;
  const total = openness + diffuseTransmittance;
  const cutOff = 65 + 30 * (1 - Math.exp(-openness / 0.1));
  const directPower = Math.max(-0.45 * Math.log(Math.max(openness, 0.01)), 0.35);
  const yarn = openness < 1 ? diffuseTransmittance / (1 - openness) : 0;
  const totalPower = yarn <= 0.33 ? 0.133 * (yarn + 0.003) ** -0.467 : 0.33 * (1 - yarn);
  return {
    direct: (i) => openness * fallTo(cutOff, directPower, i),
    total: (i) => total * Math.max(0, cosDegrees(i)) ** totalPower,
    reflectance: () => reflectance,
  };
}

/**
 * Square mesh of round wires by incidence angle: Kotey, Wright & Collins (2009), Determining
 * off-normal solar optical properties of insect screens, ASHRAE Transactions 115(1); coefficients
 * from memory. The view closes where the wires' width meets their shortened spacing.
 */
function meshLaw(screen: FabricBlind): AngleLaw {
  const { openness, diffuseTransmittance, reflectance } = screen;
  const total = openness + diffuseTransmittance;
  const cutOff = (Math.acos(1 - Math.sqrt(openness)) * 180) / Math.PI;
  const power = (slope: number, tau: number) => slope * Math.log(Math.max(tau, 0.01)) + 0.1;
  const wire = openness < 1 ? Math.min(1, reflectance / (1 - openness)) : 0;
  const grazing = reflectance + (1 - reflectance) * 0.35 * wire;
  return {
    direct: (i) => openness * fallTo(cutOff, power(-0.45, openness), i),
    total: (i) => total * Math.max(0, cosDegrees(i)) ** power(-0.65, total),
    reflectance: (i) =>
      reflectance + (grazing - reflectance) * (1 - Math.max(0, cosDegrees(i)) ** 0.17),
  };
}

/** Tables over the cosine of incidence, COS_INTERVALS + 1 values, from one law. */
function tabulateLaw(law: AngleLaw): BlindOptics {
  const optics = emptyOptics('incidence');
  for (let k = 0; k <= COS_INTERVALS; k++) {
    const incidence = (Math.acos(k / COS_INTERVALS) * 180) / Math.PI;
    const direct = law.direct(incidence);
    const total = Math.max(direct, law.total(incidence));
    const rho = Math.min(law.reflectance(incidence), 1 - total);
    optics.tauDirect[k] = direct;
    optics.tauDiffuse[k] = total - direct;
    optics.rho[k] = rho;
    optics.alpha[k] = 1 - total - rho;
  }
  return optics;
}

/** Optics of a lowered fabric by the cosine of incidence (see `fabricLaw` for the model). */
export const fabricOptics = (fabric: FabricBlind): BlindOptics => tabulateLaw(fabricLaw(fabric));

/** Optics of an insect mesh by the cosine of incidence (see `meshLaw` for the model). */
export const meshOptics = (screen: FabricBlind): BlindOptics => tabulateLaw(meshLaw(screen));

/**
 * Optics of a closed shutter, alike from every side: what passes its gaps is taken as scattered,
 * since the spots are small and a closed shutter gives no view (common practice).
 */
export function shutterOptics(shutter: ShutterBlind): BlindOptics {
  const optics = emptyOptics('incidence');
  optics.tauDiffuse.fill(shutter.transmittance);
  optics.rho.fill(shutter.reflectance);
  optics.alpha.fill(1 - shutter.transmittance - shutter.reflectance);
  return optics;
}
