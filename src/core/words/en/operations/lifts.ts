/** Words of the work: lifting what is no unit, and what comes before a lift. */
export const liftsWords = {
  'operation.lift.only-then': 'What follows is for when that is settled, and not before.',
  'operation.lift.strip': 'Take doors, drawers and loose shelves out of {unit} first, and label them.',

  'operation.set-legs.without':
    'Try that every leg goes on, then take them off again: {unit} is stood up without them.',

  'operation.hang.no-fixing':
    'Do not hang it yet: too few holes have been found for its last screws. Never hang what you cannot screw home.',
  'operation.hang.fixing-open':
    'Do not hang it yet: something is still to be settled for the holes of its last screws ({holes}). Never hang what you cannot screw home.',
  'operation.second-fix.take-down-again':
    'If a screw finds no hold, do not leave it on its hooks. Take it down again together, the way it went up.',

  'operation.connect.lift.one': 'One of you lifts {appliance}, {mass}.',
  'operation.connect.lift.one.unknown':
    'Weigh {appliance}, or read its mass off its sheet, before you lift it.',
  'operation.connect.lift.two': 'Two of you lift {appliance}, {mass}.',
  'operation.connect.lift.two.unknown':
    'Two of you lift {appliance}. Weigh it, or read its mass off its sheet, before you do.',
  'operation.connect.lift.three': 'Three of you lift {appliance}, {mass}.',
  'operation.connect.lift.three.unknown':
    'Three of you lift {appliance}. Weigh it, or read its mass off its sheet, before you do.',
  'operation.connect.lift.prop':
    'Two of you lift {appliance}, {mass}, onto a prop or bench under its place, and rest it there while hands are moved.',
  'operation.connect.lift.prop.unknown':
    'Two of you lift {appliance} onto a prop or bench under its place. Weigh it, or read its mass off its sheet, before you do.',
  'operation.connect.lift.rolled.one':
    'Walk {appliance}, {mass}, in along the floor on a blanket, or use a sack barrow. Do not lift it.',
  'operation.connect.lift.rolled.one.unknown':
    'Walk {appliance} in along the floor on a blanket, or use a sack barrow. Do not lift it. Read its mass off its sheet first.',
  'operation.connect.lift.rolled.together':
    'Together you walk {appliance}, {mass}, in along the floor on a blanket, or use a sack barrow. Do not lift it.',
  'operation.connect.lift.rolled.together.unknown':
    'Together you walk {appliance} in along the floor on a blanket, or use a sack barrow. Do not lift it. Read its mass off its sheet first.',
  'operation.connect.lift.fitters': 'Whoever fits {appliance} lifts it: {mass}.',
  'operation.connect.lift.fitters.unknown':
    'Whoever fits {appliance} lifts it, once its mass is read off its sheet.',
  'operation.connect.lift.stop':
    'Lifting {appliance}, {mass}, is too much for this crew by the published filter. Get another person for it.',
  'operation.connect.lift.stop.unknown':
    'Weigh {appliance}, or read its mass off its sheet, before it is lifted.',
  'operation.connect.lift.weight-not-known':
    'Do not lift {appliance}, {mass}, alone: what is recommended for one person is not known. Get another person for it.',
  'operation.connect.lift.weight-not-known.unknown':
    'Weigh {appliance}, or read its mass off its sheet, before it is lifted.',
  'operation.connect.lift.not-known': 'Nobody has said who lifts {appliance}, {mass}.',
  'operation.connect.lift.not-known.unknown':
    'Weigh {appliance}, or read its mass off its sheet, before it is lifted.',

  'operation.connect.over-its-floor':
    'Where {bay} has a floor of its own, that stands higher than the room’s: get more people, and a solid platform or a lifter to bring {appliance} level with it.',
  'operation.connect.fastened':
    'Screw {appliance} to the worktop or the sides as its sheet says, with screws shorter than the board is thick: with its baskets out it tips.',
  'operation.connect.hood-sheet':
    'The holes for {appliance} are not worked out here. Its own sheet says where they are and which screws: mark them from it.',
  'operation.connect.hood-trace':
    'Before you drill, have the wall round those marks traced while its circuits are live, and then off and proved dead again. Board alone does not hold it: where neither timber nor solid wall is behind a mark, do not hang it there.',
  'check.hood-holds': 'Does {appliance} hang firm when you pull at it by hand?',
  'check.hood-holes':
    'Are the holes for {appliance} marked from its own sheet, traced, and the circuits off and proved dead?',
}
