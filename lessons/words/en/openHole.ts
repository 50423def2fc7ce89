// Words of the practice open-hole, and how it ends.

export const openHole = {
  'openHole.title': 'A whole hole',
  'openHole.outcome.whole': 'You drill a whole hole of the asked depth.',
  'openHole.outcome.giveUp': 'You know when a hole is to be given up.',
  'openHole.brief.job': 'Drill a hole {depth_m} m deep. There is no score.',
  'openHole.brief.kit': 'Rods, water, powder and petrol for the day are on hand.',
  'openHole.brief.bare': 'The site is bare: dig the pit, fill it, mind the dusk.',
  'openHole.brief.end': 'Stop drilling when you are deep enough, or give the hole up.',
  'openHole.brief.holes': 'Two more holes can be begun beside it.',
  'openHole.ask.why': 'Why did the hole end where it did?',
  'openHole.ask.why.1': 'The asked depth was reached.',
  'openHole.ask.why.2': 'The ground would not let the bit in.',
  'openHole.ask.why.3': 'The stem, the pump or the fluid gave trouble.',
  'outcome.depthReached': 'The hole is {depth_m} m deep, as asked.',
} as const;
