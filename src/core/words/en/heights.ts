/** Words about heights: what demands something of them, and what comes of it. */
export const heightsWords = {
  'heights.leg-reach':
    '{unit}, foot {foot}: the leg reaches from {min} to {max}, and the floor there is at {floor:signed}.',
  'heights.stands-not-known': '{unit}: it is not known how it stands or hangs.',
  'heights.feet-not-known': '{unit}: it is not known where its feet are.',
  'heights.shim-floor':
    '{unit}, corner {corner}: it can be packed up from the floor at {floor:signed}, never down.',
  'heights.carcass-height.base': 'Base units are {height} high.',
  'heights.carcass-height.wall': 'Hung units are {height} high.',
  'heights.carcass-height.tall': 'Tall units are {height} high.',
  'heights.carcass-height.lower': '{unit} is {height} high and level with the others along the top.',
  'heights.worktop-thickness': 'The worktop {worktop} is {thickness} thick.',
  'heights.bay-in':
    'To go in, {appliance} needs {height} and {gap} to slide it, over the highest floor of its bay at {floor:signed}.',
  'heights.bay-max':
    'With its feet wound out {appliance} reaches {height}, from the lowest floor of its bay at {floor:signed}.',
  'heights.bay-out':
    'To come out again, {appliance} needs {height} and {gap} over the lip of the finish in front, {finish} thick, at {lip:signed}.',
  'heights.plinth-cover':
    'The plinth {plinth} is {height} high and has to cover down to the floor at {floor:signed}.',
  'heights.ceiling': '{unit} ends under the ceiling, which is at {ceiling:signed} where it is lowest.',
  'heights.hook-on':
    '{unit} is lifted to hook on and needs {needed} over its top; the ceiling is at {ceiling:signed} where it is lowest.',
  'heights.gap-over-worktop': 'From {min} to {max} between worktop and hung units is usual.',
  'heights.top-line': 'Tops of hung and tall units line up.',
  'heights.same-plinth': 'Tall and base units stand on one plinth line.',
  'heights.wish.min': 'Wish {wish}: not lower than {min:signed}.',
  'heights.wish.max': 'Wish {wish}: not higher than {max:signed}.',
  'heights.wish.between': 'Wish {wish}: from {min:signed} to {max:signed}.',
  'heights.wish.equals': 'Wish {wish}: in line with another height.',
  'heights.struck':
    'Its line is on the wall at {height:signed}; if it has to move, strike it again and rub the old one out.',
  'heights.achieved': '{unit} stands: its underside was set to {height:signed}.',
  'heights.height-demand-unknown': 'The demand {demand} cannot be worked out yet. Not known: {missing}.',
  'heights.height-demand-unknown.ask': 'Find out: {missing}.',
  'heights.heights-clash': 'These {count} cannot all be met, by {by} mm: {demands}.',
  'heights.heights-clash.ask': 'Decide which of them gives way, or measure again.',
  'heights.preferred-height-given-up': 'Given up, as it does not fit with what must be: {demand}.',
  'heights.height-marginal':
    'The room for {height}, from {lowest} to {highest} mm, is narrower than the readings behind it are good for: {demands}.',
  'heights.height-marginal.ask': 'Measure again, more closely.',
  'heights.leg-out-of-reach.too-short':
    '{unit}, foot {foot}: there are only {extension} under it, and its leg is at least {min} long.',
  'heights.leg-out-of-reach.too-long':
    '{unit}, foot {foot}: there are {extension} under it, and its leg is at most {max} long.',
  'heights.floor-outside-readings':
    '{unit}, {foot}: it stands {outside} mm outside the floor readings, so the floor there is only reckoned.',
  'heights.floor-outside-readings.worst':
    '{unit}, {foot}: it stands {outside} mm outside the floor readings. The floor there is reckoned from a plane that misses the readings by up to {worst} mm.',
  'heights.floor-outside-readings.ask': 'Read the floor under {unit}.',
  'heights.cannot-hook-on':
    '{unit} needs {needed} over its top to be hooked on, and there are {there} under the ceiling: {short} too little.',
} as const
