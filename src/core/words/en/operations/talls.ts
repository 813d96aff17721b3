/** Words of the work: talls. */
export const tallsWords = {
  'operation.stand-up.title': 'Stand {unit} up',
  'operation.stand-up.floor': 'Clear the floor where it lies: {long} long and {wide} wide.',
  'operation.stand-up.floor.unknown': 'Clear the floor where it lies, its whole length.',
  'operation.stand-up.edge-not-known':
    'Over which edge it can be stood up is not known yet. Do not start before that is settled.',
  'operation.stand-up.spot.left':
    'Lay it so that, once up, it stands {aside} to the left of its place and {out} further out from the wall.',
  'operation.stand-up.spot.right':
    'Lay it so that, once up, it stands {aside} to the right of its place and {out} further out from the wall.',
  'operation.stand-up.spot.straight':
    'Lay it so that, once up, it stands straight in front of its place, {out} further out from the wall.',
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
  'operation.stand-up.legs.off':
    'Take its legs off: it turns on its edge, and they are longer than the blocks.',
  'operation.stand-up.legs.wound-in': 'Wind its legs right in, to {shortest}.',
  'operation.stand-up.legs.wound-in.unknown': 'Wind its legs right in.',
  'operation.stand-up.swing.back': 'Lay it on its back, and walk it up over its back legs.',
  'operation.stand-up.swing.front': 'Lay it on its open front, and walk it up over its front legs.',
  'operation.stand-up.swing.left': 'Lay it on its left side, and walk it up over its left legs.',
  'operation.stand-up.swing.right': 'Lay it on its right side, and walk it up over its right legs.',
  'operation.stand-up.blocks-stopped':
    'Set something heavy behind the blocks, so that they cannot slide away while it turns on them.',
  'operation.stand-up.blocks-beyond':
    'Set two more of that height where its other bottom edge comes down, and tie a cord to each block, so that it is drawn out from where no hand is under the unit.',
  'operation.stand-up.beside':
    'Stand beside its head, one at each side, never under it; go hand over hand towards its foot as it rises. Before it is upright one of you goes round to where it comes over. If it gets away, let it go.',
  'operation.stand-up.room':
    'On the way up it needs {needed} over the floor; the lowest ceiling there is {ceiling}.',
  'operation.stand-up.room.unknown':
    'Whether it clears the ceiling on the way up is not known yet. Measure before you lift.',
  'operation.stand-up.does-not-fit': 'Do not start: it does not clear the ceiling on the way up.',
  'operation.stand-up.not-known-to-fit':
    'Do not start before it is known to clear the ceiling on the way up.',
  'operation.stand-up.no-restraint':
    'Do not stand it up yet: no hole has been found for what holds it back at its top. Never stand up what you cannot restrain.',
  'operation.stand-up.restraint-open':
    'Do not stand it up yet: something is still to be settled for the holes that hold it back at its top ({holes}). Never stand up what you cannot restrain.',
  'operation.stand-up.lift.two': 'Two of you lift its head end: {end} to begin with, half of its {mass}.',
  'operation.stand-up.lift.two.unknown':
    'Two of you lift its head end. Weigh it first: nobody knows its mass yet.',
  'operation.stand-up.lift.three': 'Three of you lift its head end: {end} to begin with, half of its {mass}.',
  'operation.stand-up.lift.three.unknown':
    'Three of you lift its head end. Weigh it first: nobody knows its mass yet.',
  'operation.stand-up.lift.head-on-blocks':
    'Its head end weighs {end} to begin with, half of its {mass}: lay the head on blocks too, so that your hands begin above the middle of your shins. Then lift it together.',
  'operation.stand-up.lift.head-on-blocks.unknown':
    'Lay its head on blocks too, then lift it together. Weigh it first: nobody knows its mass yet.',
  'operation.stand-up.lift.in-parts':
    '{unit} weighs {mass}: too much for this crew to stand up by the published filter. Take it apart, and put it together standing, in its place.',
  'operation.stand-up.lift.in-parts.unknown':
    'Take {unit} apart, and put it together standing, in its place.',
  'operation.stand-up.lift.too-heavy':
    'Its head end weighs {end} to begin with, half of its {mass}: too much for this crew by the published filter. Stop.',
  'operation.stand-up.lift.too-heavy.unknown':
    'What it weighs is not known, so no lift has been found for it. Weigh it first.',
  'operation.stand-up.lift.not-known':
    'Its head end weighs {end} to begin with, half of its {mass}. Nobody has said who lifts it: two at least.',
  'operation.stand-up.lift.not-known.unknown':
    'Weigh it first: nobody knows its mass yet. Its head end weighs half of that to begin with. Two of you at least lift it.',
  'operation.stand-up.hold': 'Once it stands, one of you holds it until it is restrained.',

  'operation.place-tall.title': 'Walk {unit} to its place',
  'operation.place-tall.legs-on':
    'One of you tips it a little to one side; the other fits the legs of the raised side, wound right in. Then the other side.',
  'operation.place-tall.walk.two':
    'Two of you move {unit}, {mass}, to the wall: strapped to a sack barrow, or corner by corner.',
  'operation.place-tall.walk.two.unknown':
    'Two of you move {unit} to the wall: strapped to a sack barrow, or corner by corner. Nobody knows its mass yet.',
  'operation.place-tall.walk.three':
    'Three of you move {unit}, {mass}, to the wall: strapped to a sack barrow, or corner by corner.',
  'operation.place-tall.walk.three.unknown':
    'Three of you move {unit} to the wall: strapped to a sack barrow, or corner by corner. Nobody knows its mass yet.',
  'operation.place-tall.walk.all':
    'All of you move {unit}, {mass}, to the wall: strapped to a sack barrow, or corner by corner.',
  'operation.place-tall.walk.all.unknown':
    'All of you move {unit} to the wall: strapped to a sack barrow, or corner by corner. Nobody knows its mass yet.',
  'operation.place-tall.off-blocks':
    'It stands on the blocks still. One of you tips it a finger’s breadth to one side; the other draws the block out there by its cord, with no hand under it, and it is let down gently. Then the other side.',
  'operation.place-tall.never-alone':
    'Nobody carries it upright alone, and nobody drags it on its legs. It is lifted from corner to corner, a hand’s breadth at a time.',
  'operation.place-tall.marks': 'Its sides go to {left} and {right} from the left corner of {wall}.',
  'operation.place-tall.marks.unknown': 'Its place on {wall} is not known yet.',
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
    'Pack the gap between its back and the wall beside each bracket, so that the screws do not pull it out of plumb.',
  'operation.restrain.plumb-again': 'Hold the level to it again after the last screw.',
  'operation.restrain.let-go': 'Let go of {unit} only now.',
  'operation.restrain.lay-down-again':
    'If you cannot screw it back, do not leave it standing. Lay it down again together, the way it came up.',

  'check.restraint-ready':
    'Are drill, screws and brackets here, so that {unit} is restrained as soon as it stands?',
  'label.stand-up-blocks': 'blocks under the edge it turns on',
}
