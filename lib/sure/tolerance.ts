import type { Blind } from '../blind/index.ts';
import type { Glazing } from '../glazing/index.ts';
import type { Project } from '../project/index.ts';
import type { Library } from '../study/index.ts';
import type { SureCase } from './cases.ts';

/** Constructions of library and project as they are in a case. */
export function inCase(
  project: Project,
  library: Library,
  { glass, blind }: Pick<SureCase, 'glass' | 'blind'>,
): { project: Project; library: Library } {
  const parts = <T extends Library>(of: T): T => ({
    ...of,
    glazings: glass === 1 ? of.glazings : of.glazings.map((g) => toleratedGlazing(g, glass)),
    blinds: blind === 1 ? of.blinds : of.blinds.map((b) => toleratedBlind(b, blind)),
  });
  return { project: parts(project), library: parts(library) };
}

/** g-value and solar transmittance times a factor; panes that are traced are scaled to them. */
export function toleratedGlazing(glazing: Glazing, factor: number): Glazing {
  const { g, solarTransmittance } = glazing;
  return {
    ...glazing,
    g: Math.min(g * factor, 1),
    solarTransmittance: Math.min(solarTransmittance * factor, 1),
  };
}

/**
 * A blind that lets through more or less when lowered: openness and scattered transmittance of a
 * fabric and the leak of a shutter times the factor. Of slats the gap from one to the next is taken
 * half as far off as the factor: a factor of 1.2 is a tenth more light at 45 degrees and a fifth
 * more near closed.
 */
export function toleratedBlind(blind: Blind, factor: number): Blind {
  switch (blind.kind) {
    case 'fabric': {
      const room = 1 - blind.reflectance;
      const passed = blind.openness + blind.diffuseTransmittance;
      const by = passed > 0 ? Math.min(factor, room / passed) : 1;
      return {
        ...blind,
        openness: blind.openness * by,
        diffuseTransmittance: blind.diffuseTransmittance * by,
      };
    }
    case 'shutter':
      return {
        ...blind,
        transmittance: Math.min(blind.transmittance * factor, 1 - blind.reflectance),
      };
    case 'slats':
      return { ...blind, slatSpacing: blind.slatSpacing * (1 + (factor - 1) / 2) };
  }
}
