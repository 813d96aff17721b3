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
  'operation.place-base.tips':
    'It tips where it has no foot. One of you holds it until it stands on packers there, as high as its legs.',
  'operation.place-base.never-drag-box': 'Lift it; never drag it.',
  'operation.place-base.marks': 'Its sides go to {left} and {right} from the left corner of {wall}.',
  'operation.place-base.marks.unknown': 'Its place on {wall} is not known yet.',
  'operation.place-base.island': 'Set it on its marks on the floor; it is {width} wide.',
  'operation.place-base.island.unknown': 'Set it on its marks on the floor.',

  'operation.level-base.title': 'Level {unit}',
  'operation.level-base.legs':
    'Wind the back legs until its top at the back is {top:signed} from the line. Go by the line, never by the floor. Out lifts.',
  'operation.level-base.legs.unknown':
    'Wind the back legs until its top at the back meets its line. Go by the line, never by the floor. Out lifts.',
  'operation.level-base.packers':
    'Pack it at the back until its top there is {top:signed} from the line. Go by the line, never by the floor.',
  'operation.level-base.packers.unknown':
    'Pack it at the back until its top there meets its line. Go by the line, never by the floor.',
  'operation.level-base.shims':
    'Tap them in or out until its top at the back is {top:signed} from the line. Go by the line, never by the floor.',
  'operation.level-base.shims.unknown':
    'Tap them in or out until its top at the back meets its line. Go by the line, never by the floor.',
  'operation.level-base.where-the-level-lies':
    'Lay the level on its top: first left to right along the back, then front to back along each side, last left to right along the front.',
  'operation.level-base.level-corner':
    'Lay the level on its top in both directions: along {wall}, then along {other}. Both runs grow from it.',
  'operation.level-base.corner':
    'Bring its front edges to the string lines of both runs. Its side stands {off} off {other}.',
  'operation.level-base.corner.unknown':
    'Bring its front edges to the string lines of both runs. How far its side stands off {other} is not known yet.',
  'operation.level-base.line-up':
    'Bring its front edge to the string line, {front} out from the wall, and its side to its neighbour.',
  'operation.level-base.line-up.unknown':
    'Bring its front edge to the string line and its side to its neighbour.',
  'operation.level-base.line-up-island': 'Bring its sides to their marks on the floor.',
  'operation.level-base.every-leg-carries':
    'Try each leg by hand. One that turns freely carries nothing: wind it out until it grips, and level again.',
  'operation.level-base.every-shim-carries':
    'Press on each corner in turn. Where it rocks, shim it there, and level again.',
  'operation.level-base.every-corner-carries':
    'Press on each corner in turn. Where it rocks, pack it there, and level again.',

  'operation.shim.shims.corners':
    'Shim under its sides: back left {backLeft}, back right {backRight}, front left {frontLeft}, front right {frontRight}.',
  'operation.shim.shims.corners.unknown':
    'How high each shim is is not known yet. Read the floor where each corner will stand.',
  'operation.shim.shims.each': 'Shim each corner up to its figure here.',
  'operation.shim.shims.each.unknown':
    'How high each shim is is not known yet. Read the floor where each corner will stand.',
  'operation.shim.frame.corners':
    'Frame and shims together come to: back left {backLeft}, back right {backRight}, front left {frontLeft}, front right {frontRight}.',
  'operation.shim.frame.corners.unknown':
    'How high frame and shims come is not known yet. Read the floor where each corner will stand.',
  'operation.shim.frame.each': 'Frame and shims together come to the figure of each corner here.',
  'operation.shim.frame.each.unknown':
    'How high frame and shims come is not known yet. Read the floor where each corner will stand.',
  'operation.shim.cleat.corners':
    'Cleat and shims together come to: back left {backLeft}, back right {backRight}, front left {frontLeft}, front right {frontRight}.',
  'operation.shim.cleat.corners.unknown':
    'How high cleat and shims come is not known yet. Read the floor where each corner will stand.',
  'operation.shim.cleat.each': 'Cleat and shims together come to the figure of each corner here.',
  'operation.shim.cleat.each.unknown':
    'How high cleat and shims come is not known yet. Read the floor where each corner will stand.',
  'operation.shim.bare': 'Where that is 0 it stands on the floor itself.',
  'operation.shim.solid': 'Push shims in by twos, thick end over thin end, until the stack is solid.',
  'operation.shim.solid-on-block':
    'Lay a block where it is high, and push shims in on it by twos, thick end over thin end, until the stack is solid.',

  'operation.fix.title': 'Fix {unit} to the wall',
  'operation.fix.no-hole': 'No place for its brackets has been found yet. Stop, and see why.',
  'operation.fix.brackets': 'Fix an L bracket at each side, with 15 mm screws into the unit.',
  'operation.fix.pack': 'Pack behind it first: a screw must not pull it to a hollow wall.',
  'operation.fix.level-again': 'Check the level again after the last screw.',

  'operation.fix-through-rail.no-hole':
    'No stud has been found for the screw through its rail yet. Stop, and see why.',
  'operation.fix-through-rail.pack':
    'Where the rail stands off the wall, shim it solid at the stud first: a screw must not pull the box out of square.',

  'operation.fix-island.title': 'Fix {unit} to the floor',
  'operation.fix-island.cleats': 'Screw cleats to the floor inside its marks, and set it over them.',
  'operation.fix-island.heated':
    'There are heating pipes or mats in the floor: glue the cleats, do not drill.',
  'operation.fix-island.heating-not-known':
    'Whether the floor is heated is not known: find out, or glue the cleats and do not drill.',
  'operation.fix-island.through-the-side': 'Screw the unit to the cleats through its sides.',
}
