/** Words of the work: talls. */
export const tallsWords = {
  'operation.stand-up.title': 'Stand {unit} up',
  'operation.stand-up.floor': 'Clear the floor where it lies: {height} long and {width} wide.',
  'operation.stand-up.floor.unknown': 'Clear the floor where it lies, its whole length.',
  'operation.stand-up.edge-not-known':
    'Over which edge it can be stood up is not known yet. Do not start before that is settled.',
  'operation.stand-up.over.back':
    'Lay it on its back, bottom edge on blocks {blocks} high, and walk it up over its back edge.',
  'operation.stand-up.over.back.unknown':
    'Lay it on its back, bottom edge on blocks, and walk it up over its back edge.',
  'operation.stand-up.over.front':
    'Lay it on its open front, bottom edge on blocks {blocks} high, and walk it up over its front edge.',
  'operation.stand-up.over.front.unknown':
    'Lay it on its open front, bottom edge on blocks, and walk it up over its front edge.',
  'operation.stand-up.over.left':
    'Lay it on its left side, bottom edge on blocks {blocks} high, and walk it up over that edge.',
  'operation.stand-up.over.left.unknown':
    'Lay it on its left side, bottom edge on blocks, and walk it up over that edge.',
  'operation.stand-up.over.right':
    'Lay it on its right side, bottom edge on blocks {blocks} high, and walk it up over that edge.',
  'operation.stand-up.over.right.unknown':
    'Lay it on its right side, bottom edge on blocks, and walk it up over that edge.',
  'operation.stand-up.room':
    'On the way up it needs {needed} over the floor; the lowest ceiling there is {ceiling}.',
  'operation.stand-up.room.unknown':
    'Whether it clears the ceiling on the way up is not known yet. Measure before you lift.',
  'operation.stand-up.does-not-fit': 'It does not clear. Do not start.',
  'operation.stand-up.not-known-to-fit': 'Do not start before it is known to clear.',
  'operation.stand-up.hold': 'Once it stands, one of you holds it until it is restrained.',

  'operation.place-tall.title': 'Walk {unit} to its place',
  'operation.place-tall.walk': 'Lift {unit} a little, walk it straight back to the wall and set it down.',
  'operation.place-tall.marks': 'Its sides go to {left} and {right} from the left corner of {wall}.',
  'operation.place-tall.marks.unknown': 'Its place on {wall} is not known yet.',
  'operation.place-tall.lift-not-drag': 'Lift it; never drag it on its legs.',
  'operation.place-tall.hold': 'Do not let go of it.',

  'operation.level-tall.title': 'Plumb {unit}',
  'operation.level-tall.legs': 'Wind the legs until its underside is {underside:signed} from the line.',
  'operation.level-tall.legs.unknown': 'Wind the legs until its underside meets its line.',
  'operation.level-tall.packers': 'Pack it until its underside is {underside:signed} from the line.',
  'operation.level-tall.packers.unknown': 'Pack it until its underside meets its line.',
  'operation.level-tall.where-the-level-lies':
    'Hold the long level upright against the front edge of a side panel, then against the side itself.',
  'operation.level-tall.top': 'Check its top: {top:signed} from the line.',
  'operation.level-tall.top.unknown': 'Check its top against its line.',
  'operation.level-tall.hold': 'One of you holds it all the while.',

  'operation.restrain.title': 'Restrain {unit}',
  'operation.restrain.no-hole':
    'No fixing for it has been found yet. Keep hold of it; do not let go before one is.',
  'operation.restrain.pack':
    'Screw it to the wall through its back, packed behind each screw so that it is not pulled out of plumb.',
  'operation.restrain.plumb-again': 'Hold the level to it again after the last screw.',
  'operation.restrain.let-go': 'Let go of {unit} only now.',
}
