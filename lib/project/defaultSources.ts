import { roomDefaultSources as room } from '../room/index.ts';

/**
 * Where each default comes from, by path; `[]` stands for every entry of a list. A path speaks for
 * everything below it.
 */
export const defaultSources: Readonly<Record<string, string>> = {
  format: 'Fixed by the file format.',
  version: 'Fixed by the file format.',
  name: 'A word to start from.',
  notes: 'Empty.',
  units: 'All figures in the file are SI.',
  site: 'Burlington, Vermont: the airport station of the TMY3 files (Wilcox & Marion 2008, NREL/TP-581-43156), rounded.',
  'site.albedo':
    '0.2, the usual ground reflectance without snow: Duffie & Beckman, Solar Engineering of Thermal Processes, section 2.15 (from memory).',
  'site.horizon': 'An open horizon.',
  'site.windExposure':
    '0.55: the power law of the ASHRAE Handbook, Fundamentals, airflow around buildings, at 3 m over suburban or wooded ground, from a station in the open (constants from memory).',
  year: 'The calendar year for weekdays and clock changes; a convention.',
  climate: 'The station of the default site; seed 1 is a convention.',
  'walls[].id': 'Made from the compass word.',
  'walls[].name': 'Made from the compass word.',
  'walls[].azimuth': 'A house square to the compass.',
  'walls[].tilt': '90 degrees, an upright wall.',
  'walls[].thickness':
    '0.42 m, usual for a timber wall with that much insulation (common practice).',
  'walls[].U':
    '0.12 W/m2K: very low energy houses in cold climates stay under 0.15 (common practice).',
  'openings[].id': 'Made from the kind.',
  'openings[].name': 'Made from the kind.',
  'openings[].wall': 'The wall it is made for.',
  'openings[].room': 'The room it is made for.',
  'openings[].kind': 'The kind it is made as.',
  'openings[].width':
    'A usual size; a fully glazed door of 4 by 8 ft is 1.219 by 2.438 m (common practice).',
  'openings[].height': 'A usual size (common practice).',
  'openings[].sillHeight':
    'A usual sill: 0.9 m under a window, the floor under a door (common practice).',
  'openings[].count': 'One unit.',
  'openings[].frame.widths':
    '0.12 m, insulated timber; narrower where fixed (common practice, as in data/glazings.json).',
  'openings[].frame.Uf':
    '0.76 W/m2K, insulated timber that brings a whole window to about 0.8; 1.2 in a roof (common practice).',
  'openings[].frame.psiSpacer': '0.03 W/mK, a warm-edge spacer (common practice).',
  'openings[].frame.psiInstall':
    '0.04 W/mK, insulation that stops at the frame; 0.06 in a roof (common practice).',
  'openings[].setBack':
    '0.14 m, a frame in the outer part of the insulation; 0.02 in a roof (common practice).',
  'openings[].reveal': 'Equal to the set-back: a plain hole in the wall.',
  'openings[].revealReflectance': '0.5, light render or wood (common practice).',
  'openings[].glazing':
    'Triple glazing with two low-emissivity coatings, usual in such houses (common practice).',
  'openings[].airing':
    'The hole inside the frame; tilts by 8 degrees, about 0.16 m at the head of a window, 20 in a roof (common practice).',
  'openings[].escapeRoute': 'A door counts as a way out until told otherwise.',
  glazings: 'None of its own.',
  blinds: 'None of its own.',
  schedules: 'None.',
  groups: 'None.',
  'rooms[].id': 'A word to start from.',
  'rooms[].name': 'A word to start from.',
  'rooms[].use': 'A living room.',
  'rooms[].floorArea': '40 m2, a round figure to start from.',
  'rooms[].volume': `Clear height: ${room.height}.`,
  'rooms[].mass': `${room.massClass}.`,
  'rooms[].envelope': `U-values: ${room.wallU} (walls), ${room.roofU} (roof), ${room.floorU} (floor); areas are an estimate of a detached room, to be replaced.`,
  'rooms[].thermalBridges': `${room.thermalBridges}.`,
  'rooms[].infiltration': `${room.n50}; ${room.shielding}.`,
  'rooms[].ventilation': `${room.airChange}; ${room.heatRecovery}; ${room.bypassAbove}.`,
  'rooms[].people': `Two adults, one at home by day (common practice); ${room.heatPerPerson}.`,
  'rooms[].appliances': `${room.appliancesAlways}; ${room.appliancesInUse}.`,
  'rooms[].heating': `${room.heatingSetPoint}.`,
  'rooms[].occupied': 'Awake hours of a living room (common practice).',
  'rooms[].airing': `${room.airingOpenAbove}; ${room.airingCloseBelow}; ${room.airingMargin}.`,
  'settings.skyModel': 'Perez et al. (1990), the better of the two on most sites.',
  'settings.criterion':
    'Share of the year over a temperature, the usual one in very low energy housing (common practice).',
  'settings.adaptiveCategory': 'II, normal expectations: EN 16798-1:2019, table 4 (from memory).',
  'settings.dinRegion': 'B, the middle one of the three summer regions of DIN 4108-2:2013.',
  'settings.overheatingLimit': '25 C, the usual limit for very low energy housing (from memory).',
  'settings.overheatingShare':
    '10 % of the year, the usual limit for very low energy housing (from memory).',
};
