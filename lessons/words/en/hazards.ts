// The hazard card: one caution for each danger of the real work. The simulator does not replace supervised practice.

export const hazards = {
  'hazard.turningStem.title': 'Turning stem',
  'hazard.turningStem.text': 'No gloves, loose sleeves or scarves near the stem. Hands off while it turns.',
  'hazard.rods.title': 'Rods',
  'hazard.rods.text': 'Stop flow and stem before you unscrew. Clamp the rod first. Lift with two people.',
  'hazard.petrol.title': 'Petrol and exhaust',
  'hazard.petrol.text': 'Engine off and cool before you refuel. No flame. Never run it in a shelter or pit.',
  'hazard.electric.title': 'Electric drive',
  'hazard.electric.text': 'Use a residual-current device. Keep your hands dry.',
  'hazard.pits.title': 'Pits and open holes',
  'hazard.pits.text': 'Fence and cover them. Keep children and animals away.',
  'hazard.powder.title': 'Powder dust',
  'hazard.powder.text': 'Wear a mask. Stand with the wind at your back.',
  'hazard.chlorine.title': 'Chlorine',
  'hazard.chlorine.text': 'Gloves, and mind your eyes. Dissolve it before you pour. Never mix it with acid.',
  'hazard.overhead.title': 'Overhead lines',
  'hazard.overhead.text': 'Look up before you raise a rod.',
  'hazard.hoses.title': 'Hoses',
  'hazard.hoses.text': 'Stop the pump and bleed a hose before you undo it.',
  'hazard.water.title': 'Water',
  'hazard.water.text': 'Nobody drinks from a new well before a laboratory says so.',
  'hazard.limits':
    'The simulator does not replace supervised practice. Local codes, permits and licensed drillers come first.',
} as const;
