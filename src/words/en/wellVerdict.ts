// Words of the debrief of a well: the verdict in plain sentences.

export const wellVerdict = {
  'debrief.step.well': 'The well',

  'well.lead': 'This is what you hand over. Figures come from the true ground.',
  'well.standing.good': 'good',
  'well.standing.mind': 'could be better',
  'well.standing.bad': 'not good',
  'well.finding.yield': 'Water',
  'well.finding.lift': 'Pump',
  'well.finding.sand': 'Sand and cloudiness',
  'well.finding.seal': 'Dirty water from above',
  'well.finding.latrine': 'Latrine',
  'well.finding.casing': 'Casing and screen',
  'well.finding.clean': 'Disinfection and taste',
  'well.finding.head': 'Apron, drain, cap',

  'well.yield.now': 'It gives {now:0} L/min now, {dry:0} L/min in the dry month.',
  'well.yield.limit.ground': 'The ground sets the limit.',
  'well.yield.limit.lift': 'The reach of the pump sets the limit.',
  'well.yield.limit.screen': 'Screen or ring are choked: they set the limit.',
  'well.yield.limit.dry': 'In the dry month no water stands over the screen.',
  'well.yield.share': 'That is {share:percent} of what this screen could give.',
  'well.people': 'Enough for {served:0} people. {asked:0} will come.',

  'well.lift.none': 'No pump is fitted.',
  'well.lift.works': 'Fitted: {lift:word}. It draws water all the year.',
  'well.lift.fails': 'Fitted: {lift:word}. It cannot lift the water of the dry month.',
  'well.lift.reaches': 'In the dry month, {lift:word}: {flow:0} L/min.',
  'well.lift.short': 'In the dry month, {lift:word}: no water.',

  'well.sand': 'Sand: {sand:1} mg/L. More than 5 mg/L wears pumps out.',
  'well.turbidity': 'Cloudiness: {turbidity:1} NTU. Below 5 it looks clear.',

  'well.leak.casing': 'Down along the casing',
  'well.leak.ground': 'Down through the ground',
  'well.seal.lies': 'The seal lies from {from:1} to {to:1} m, {length:1} m of it sound. Narrowest gap {gap:0} mm.',
  'well.seal.none': 'There is no seal.',
  'well.seal.casingFirst': 'The casing is the quicker way: a better seal would help.',
  'well.seal.groundFirst': 'The ground is the quicker way: no seal can change that.',

  'well.latrine': 'The nearest latrine is {distance:0} m away: {time}.',
  'well.latrine.safe': 'This ground asks for {safe:0} m. Your local code decides.',
  'well.latrine.significant': 'Germs can arrive alive.',
  'well.latrine.low': 'Few germs live that long.',
  'well.latrine.veryLow': 'Hardly any germ lives that long.',

  'well.casing.depth': 'The casing stands at {depth:1} m.',
  'well.casing.snapped': 'The pipe has snapped at its slots.',
  'well.casing.section': 'Slots leave {section:percent} of the wall. It bears {collapse:1} times what it meets.',
  'well.screen':
    'Screen {from:1} to {to:1} m: {ground:percent} in water-bearing ground, {wet:percent} below the lowest water.',
  'well.screen.speed': 'In daily use water enters at {speed:1} cm/s. Common practice: 3 or less.',

  'well.clean.none': 'The well was not disinfected.',
  'well.clean.enough': 'Chlorine was strong enough, and stood long enough.',
  'well.clean.short': 'Chlorine was too weak, stood too short, or the water was cloudy.',
  'well.clean.left': 'There is still {left:1} mg/L of chlorine in the water: pump it out.',
  'well.salt.fresh': 'The water is fresh: {salt:1} g of salt in a litre.',
  'well.salt.brackish': 'The water is brackish: {salt:1} g of salt in a litre.',
  'well.salt.saline': 'The water is salt: {salt:1} g in a litre.',
  'well.salt.brine': 'The water is brine: {salt:0} g of salt in a litre.',

  'well.head': 'Apron {apron:1} m, drain {drain:1} m, casing {stickUp:1} m above ground.',
  'well.head.cap': 'A cap closes it.',
  'well.head.noCap': 'It stands open: anything can fall in.',
  'well.head.dry': 'It stands above the flood.',
  'well.head.flooded': 'The flood will cover it.',

  'well.days.least': 'less than an hour',
  'well.days.hours': { one: '{n:0} hour', other: '{n:0} hours' },
  'well.days.days': { one: '{n:0} day', other: '{n:0} days' },
  'well.days.years': { one: '{n:0} year', other: '{n:0} years' },
  'well.days.longest': 'more than 100 years',

  'well.spent': 'It took {hours:0} working hours and {cost:0} marks.',
} as const;
