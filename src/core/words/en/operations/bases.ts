/** Words of the work: bases. */
export const basesWords = {
  'operation.place-base.title': 'Set {unit} in its place',
  'operation.place-base.lift.alone': 'Lift {unit}, {mass}, into its place.',
  'operation.place-base.lift.alone.unknown': 'Weigh {unit} before you lift it: nobody knows its mass yet.',
  'operation.place-base.lift.two': 'Two of you lift {unit}, {mass}, into its place.',
  'operation.place-base.lift.two.unknown':
    'Two of you lift {unit}. Weigh it first: nobody knows its mass yet.',
  'operation.place-base.lift.three': 'Three of you lift {unit}, {mass}, into its place.',
  'operation.place-base.lift.three.unknown':
    'Three of you lift {unit}. Weigh it first: nobody knows its mass yet.',
  'operation.place-base.lift.lifter': 'Move {unit}, {mass}, on the lifter.',
  'operation.place-base.lift.lifter.unknown':
    'Move {unit} on the lifter. Weigh it first: nobody knows its mass yet.',
  'operation.place-base.lift.prop': 'Two of you lift {unit}, {mass}, into its place.',
  'operation.place-base.lift.prop.unknown':
    'Two of you lift {unit}. Weigh it first: nobody knows its mass yet.',
  'operation.place-base.lift.too-heavy':
    '{unit} weighs {mass}: too much for this crew by the published filter. Stop.',
  'operation.place-base.lift.too-heavy.unknown':
    'What {unit} weighs is not known, so no lift has been found for it. Weigh it first.',
  'operation.place-base.never-drag': 'Lift it; never drag it on its legs.',
  'operation.place-base.marks': 'Its sides go to {left} and {right} from the left corner of {wall}.',
  'operation.place-base.marks.unknown': 'Its place on {wall} is not known yet.',
  'operation.place-base.island': 'Set it on its marks on the floor; it is {width} wide.',
  'operation.place-base.island.unknown': 'Set it on its marks on the floor.',

  'operation.level-base.title': 'Level {unit}',
  'operation.level-base.legs': 'Wind the legs until its top is {top:signed} from the line.',
  'operation.level-base.legs.unknown': 'Wind the legs until its top meets its line.',
  'operation.level-base.packers': 'Shim it until its top is {top:signed} from the line.',
  'operation.level-base.packers.unknown': 'Shim it until its top meets its line.',
  'operation.level-base.where-the-level-lies':
    'Lay the level on its top, front to back along each side, then across the front.',
  'operation.level-base.corner': 'Check its distance from both walls: both runs grow from it.',
  'operation.level-base.line-up': 'Bring its front to the string line and its side to its neighbour.',
  'operation.level-base.not-to-the-floor': 'Level it to the line, never to the floor.',

  'operation.fix.title': 'Fix {unit} to the wall',
  'operation.fix.no-hole': 'No place for its brackets has been found yet. Stop, and see why.',
  'operation.fix.brackets': 'Fix an L bracket at each side, with 15 mm screws into the unit.',
  'operation.fix.pack': 'Pack behind it first: a screw must not pull it to a hollow wall.',
  'operation.fix.level-again': 'Check the level again after the last screw.',

  'operation.fix-island.title': 'Fix {unit} to the floor',
  'operation.fix-island.cleats': 'Screw cleats to the floor inside its marks, and set it over them.',
  'operation.fix-island.heated':
    'There are heating pipes or mats in the floor: glue the cleats, do not drill.',
  'operation.fix-island.heating-not-known':
    'Whether the floor is heated is not known: find out, or glue the cleats and do not drill.',
  'operation.fix-island.through-the-side': 'Screw the unit to the cleats through its sides.',
}
