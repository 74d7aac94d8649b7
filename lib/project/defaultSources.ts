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
    'The hole inside the frame; tilts by 7 degrees, about 0.15 m at the head of a window, 20 in a roof (common practice).',
  'openings[].escapeRoute': 'A door counts as a way out until told otherwise.',
  glazings: 'None of its own.',
  blinds: 'None of its own.',
  schedules: 'None.',
  groups: 'None.',
  'rooms[].id': 'A word to start from.',
  'rooms[].name': 'A word to start from.',
  'rooms[].use': 'A living room.',
  'rooms[].floorArea': '40 m2, a round figure to start from.',
  'rooms[].volume': 'A clear height of 2.6 m.',
  'rooms[].mass': 'Medium, EN ISO 13790:2008, table 12: timber walls with a screed floor.',
  'rooms[].envelope':
    'Walls, roof and floor of a free-standing room of that size with U values usual in such houses (common practice).',
  'rooms[].thermalBridges':
    '0: edges designed free of thermal bridges, outer dimensions (common practice).',
  'rooms[].infiltration':
    '0.6 air changes at 50 Pa, the usual limit for very low energy houses (common practice); e 0.07, EN ISO 13789:2007, annex C (from memory).',
  'rooms[].ventilation':
    '40 m3/h, about 0.4 air changes, 80 % heat recovery, by-passed over 22 C (common practice).',
  'rooms[].people': 'One person at 90 W of dry heat while somebody is in (common practice).',
  'rooms[].appliances':
    'About 1.5 W/m2 as a mean over the week (common practice for efficient appliances).',
  'rooms[].heating':
    '20 C, the usual winter set-point of energy balances (EN ISO 13790:2008, annex G, from memory).',
  'rooms[].occupied': 'Away from 8 to 17 on weekdays (assumed).',
  'rooms[].airing':
    'Sashes tilted when it is over 24 C inside and cooler outside, shut while away (assumed).',
  'settings.skyModel': 'Perez et al. (1990), the better of the two on most sites.',
  'settings.criterion':
    'Share of the year over a temperature, the usual one in very low energy housing (common practice).',
  'settings.adaptiveCategory': 'II, normal expectations: EN 16798-1:2019, table 4 (from memory).',
  'settings.dinRegion': 'B, the middle one of the three summer regions of DIN 4108-2:2013.',
  'settings.overheatingLimit': '25 C, the usual limit for very low energy housing (from memory).',
  'settings.overheatingShare':
    '10 % of the year, the usual limit for very low energy housing (from memory).',
};
