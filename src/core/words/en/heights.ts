/** Words about heights: what demands something of them, and what comes of it. */
export const heightsWords = {
  'heights.leg-reach':
    'The {foot} leg of {unit} reaches from {min} to {max}. The floor under it is {floor:signed} from the line.',
  'heights.stands-not-known': '{unit}: it is not known how it stands or hangs.',
  'heights.feet-not-known': '{unit}: it is not known where its feet are.',
  'heights.shim-floor':
    '{unit}, {corner} corner: it can be packed up from the floor, {floor:signed} from the line, but not let down.',
  'heights.carcass-height.base': 'Base units are {height} high.',
  'heights.carcass-height.wall': 'Hung units are {height} high.',
  'heights.carcass-height.tall': 'Tall units are {height} high.',
  'heights.carcass-height.lower': '{unit} is {height} high and level with the others along the top.',
  'heights.worktop-thickness': 'The {worktop} is {thickness} thick.',
  'heights.bay-in':
    'To go in, {appliance} needs {height} and {gap} to slide it, over the highest floor of its space, {floor:signed} from the line.',
  'heights.bay-max':
    'With its feet wound out {appliance} reaches {height}, from the lowest floor of its space, {floor:signed} from the line.',
  'heights.bay-out':
    'To come out again, {appliance} needs {height} and {gap} over the edge of the floor finish in front: {finish} thick, its top {lip:signed} from the line.',
  'heights.plinth-cover':
    'The board of the {plinth} is {height} high. It has to reach the floor, {floor:signed} from the line where it is lowest.',
  'heights.ceiling':
    '{unit} ends under the ceiling. Its lowest place there is {ceiling:signed} from the line.',
  'heights.hook-on':
    '{unit} is lifted to hook on and needs {needed} over its top. The lowest ceiling there is {ceiling:signed} from the line.',
  'heights.hook-on-mid':
    '{unit} is lifted to hook on. With its height screws as they will stay it needs {needed} over its top. The lowest ceiling there is {ceiling:signed} from the line.',
  'heights.gap-over-worktop': 'From {min} to {max} between worktop and hung units is usual.',
  'heights.top-line': 'Tops of hung and tall units line up.',
  'heights.same-plinth': 'Tall and base units stand on one plinth line.',
  'heights.usual-worktop':
    'No height was wished. From {from} to {to} over the finished floor is usual for a worktop.',
  'heights.usual-plinth':
    'No height was wished. From {from} to {to} over the finished floor is usual for a plinth.',
  'heights.window-board':
    'The worktop goes in under the window board. The underside of the board is {underside:signed} from the line where it is lowest.',
  'heights.wish-from-bare-floor':
    'Your wish for the {height} counts from the floor as it was read. A finish of {finish} comes on it, so that it will stand that much less over the finished floor.',
  'heights.wish-from-bare-floor.ask': 'If you meant the finished floor, add {finish} to the wish.',
  'heights.wish.min': 'Your wish: {height} not lower than {min:signed} from the line.',
  'heights.wish.max': 'Your wish: {height} not higher than {max:signed} from the line.',
  'heights.wish.between': 'Your wish: {height} from {min:signed} to {max:signed} from the line.',
  'heights.wish.at': 'Your wish: {height} at {min:signed} from the line.',
  'heights.wish.equals': 'Your wish: {height} in line with the {other}.',
  'heights.struck':
    'The line for the {of} is on the wall, {height:signed} from the line. If it has to move, strike it again and rub the old one out.',
  'heights.achieved': '{unit} stands. Its underside was set to {height:signed} from the line.',
  'heights.height-demand-unknown': 'What depends on {demand} cannot be worked out yet. Not known: {missing}.',
  'heights.height-demand-unknown.ask': 'Find out: {missing}.',
  'heights.heights-clash': 'These {count} cannot all be met. They miss by {by} mm: {demands}.',
  'heights.heights-clash.ask': 'Decide which of them gives way, or measure again.',
  'heights.preferred-height-given-up':
    'This had to be given up, because something that must be left no room for it, or less than the readings are good for: {demand}.',
  'heights.usual-height-given-up':
    'Not kept here: {demand}. What must be leaves no room for it, or less than the readings are good for. Nobody wished it; it is what most kitchens have.',
  'heights.height-marginal':
    'The {height} has room only from {lowest} to {highest} mm from the line. That is less than the readings behind it are good for: {demands}.',
  'heights.height-marginal.ask': 'Measure again, more closely.',
  'heights.leg-out-of-reach.too-short':
    '{unit}, {foot} leg: there are only {extension} under it, and the leg is at least {min} long.',
  'heights.leg-out-of-reach.too-long':
    '{unit}, {foot} leg: there are {extension} under it, and the leg is at most {max} long.',
  'heights.leg-near-end.shortest':
    '{unit}, {foot} leg: there are {extension} under it, and the leg is at least {end} long. Readings this near cannot tell whether it goes in.',
  'heights.leg-near-end.longest':
    '{unit}, {foot} leg: there are {extension} under it, and the leg is at most {end} long. Readings this near cannot tell whether it reaches.',
  'heights.leg-near-end.ask':
    'Read the floor under {unit} again, from the main line where you can. Or choose another height for the units.',
  'heights.floor-outside-readings':
    '{unit}, {foot}: it stands {outside} mm outside the floor readings, so the floor there is only reckoned.',
  'heights.floor-outside-readings.worst':
    '{unit}, {foot}: it stands {outside} mm outside the floor readings. The floor there is reckoned from a plane that misses the readings by up to {worst} mm.',
  'heights.floor-outside-readings.ask': 'Read the floor under {unit}.',
  'heights.cannot-hook-on':
    '{unit} needs {needed} over its top to be hooked on, and there are {there} under the ceiling: {short} too little.',
  'heights.cannot-hook-on.wound-down':
    '{unit} needs {needed} over its top to be hooked on, or {least} with its height screws wound right down. There are {there} under the ceiling: {short} too little.',
} as const
