/** Words of the work: closing a run, joining neighbours, and fillers that set the place of a unit. */
export const joiningWords = {
  'operation.last-gap.measure':
    'First measure the gap left between {from} and {to}, at front and back, top and bottom. It should be {gap}.',
  'operation.last-gap.needs': '{unit} needs {needs}. Less than that: stop, and find what has moved.',
  'operation.last-gap.too-narrow':
    '{unit} needs {needs}, more than the drawing leaves. Do not lift it in before that is settled.',
  'operation.last-gap.with-filler': 'That counts {fillers}.',
  'label.gap-left': 'gap left for {unit}, between {from} and {to}',
  'label.gap-needed': 'width {unit} needs, with what goes in beside it',
  'check.gap-left': 'How wide is the gap left for {unit}, at its narrowest?',

  'operation.join.onto-tall':
    'Hold {unit} to the side of {tall}: it is {depth} deep, the tall {tallDepth}. Drill from inside {unit}.',
  'operation.join.onto-tall.unknown': 'Hold {unit} to the side of {tall}, and drill from inside {unit}.',
  'operation.join.home':
    'Now turn home the screws left slack in {units}. Leave slack any that still waits for its other neighbour.',
  'check.sides-close': 'How wide is the widest gap between {left} and {right}?',
  'check.flush-when-home':
    'With the slack screws home: how far are the front edges of {left} and {right} out of flush?',
  'operation.second-fix.slack':
    'Drive each screw in, then turn it back a quarter turn: it still holds, and goes home when {unit} is joined to its neighbours.',
  'operation.second-fix.let-go-slack':
    'With both hands still under it, push up at its front edge and pull. Let go of {unit} only when it stays, and every screw is in.',
  'check.stays-on': 'Does {unit} stay on when you push up at its front edge and pull?',

  'operation.panel.title.corner': 'Fit {part}, in the corner',
  'operation.panel.scribe-filler':
    'Measure the gap at top and bottom: a wall leans. Scribe it to the wall, and plane to the scribed mark.',
  'operation.panel.corner':
    'It goes in now, before {next} is pushed home: it keeps {next} out of the corner, so that doors and drawers clear.',
  'operation.panel.between':
    'It goes in now, before {next} is pushed home: it stands between {first} and {next}.',
  'operation.panel.onto': 'Clamp it flush with the front edge of {onto}, and screw it on from inside.',
  'operation.panel.onto-before':
    'With {onto} still on the floor, clamp it flush with its front edge, and screw it on from inside.',
  'operation.panel.taper.wider':
    'The corner is wider than square: over {depth} the gap grows by {taper}, to {front} at the face. Cut it to what you measure there.',
  'operation.panel.taper.wider.unknown':
    'The corner is wider than square: the gap grows by {taper} towards the face. Cut it to what you measure there.',
  'operation.panel.taper.narrower':
    'The corner is narrower than square: over {depth} the gap shrinks by {taper}, to {front} at the face. Cut it to what you measure there.',
  'operation.panel.taper.narrower.unknown':
    'The corner is narrower than square: the gap shrinks by {taper} towards the face. Cut it to what you measure there.',
  'operation.panel.taper.unknown': 'Measure the gap at the face of the unit: the corner may not be square.',
  'operation.panel.corner-taper.wider':
    'The corner is wider than square, by {taper} over {depth}. Hold a straightedge along both fronts before you screw it.',
  'operation.panel.corner-taper.wider.unknown':
    'The corner is wider than square. Hold a straightedge along both fronts before you screw it.',
  'operation.panel.corner-taper.narrower':
    'The corner is narrower than square, by {taper} over {depth}. Hold a straightedge along both fronts before you screw it.',
  'operation.panel.corner-taper.narrower.unknown':
    'The corner is narrower than square. Hold a straightedge along both fronts before you screw it.',
  'operation.panel.corner-taper.unknown':
    'The corner has not been measured. Hold a straightedge along both fronts before you screw it.',
  'label.corner-taper': 'wider at the face of the unit than at its back (− is narrower)',
  'label.width-at-front': '{part}, at the face of the unit',
  'check.filler-width': 'How wide is {part}, at its narrowest?',
  'check.filler-flush': 'Is {part} flush with the front edge of {unit}, top to bottom?',
}
