/** Words of the work: hanging. */
export const hangingWords = {
  'operation.hang.title': 'Hang {unit}',
  'operation.hang.lift.alone': 'Take {unit}, {mass}, with both hands under it.',
  'operation.hang.lift.alone.unknown': 'Weigh {unit} before you lift it: nobody knows its mass yet.',
  'operation.hang.lift.two': 'Two of you take {unit}, {mass} stripped, one at each end.',
  'operation.hang.lift.two.unknown': 'Two of you lift {unit}. Weigh it first: nobody knows its mass yet.',
  'operation.hang.lift.three':
    'Three of you take {unit}, {mass} stripped: one at each end, one under its middle.',
  'operation.hang.lift.three.unknown': 'Three of you lift {unit}. Weigh it first: nobody knows its mass yet.',
  'operation.hang.lift.lifter': 'Raise {unit}, {mass}, on the lifter: it carries all of it.',
  'operation.hang.lift.lifter.unknown':
    'Raise {unit} on the lifter. Weigh it first: nobody knows its mass yet.',
  'operation.hang.lift.prop': 'Two of you lift {unit}, {mass}, onto a batten or prop, and rest it there.',
  'operation.hang.lift.prop.unknown':
    'Two of you lift {unit} onto a batten or prop. Weigh it first: nobody knows its mass yet.',
  'operation.hang.lift.too-heavy':
    '{unit} weighs {mass}: too much for this crew by the published filter. Stop.',
  'operation.hang.lift.too-heavy.unknown':
    'What {unit} weighs is not known, so no lift has been found for it. Weigh it first.',
  'operation.hang.together':
    'Lift together, at a word, from the floor or from a batten or prop under it. Nobody climbs with the unit in hand.',
  'operation.hang.tug': 'Feel both hooks: tug down and out, gently, at each end in turn. Neither may give.',
  'operation.hang.hook':
    'Raise it {lift} above its place, move it in to the wall and lower it onto the hooks.',
  'operation.hang.hook.unknown':
    'Raise it above its place, move it in to the wall and lower it onto the hooks.',
  'operation.hang.not-said': 'Nobody has said what {unit} hangs by. Do not start before that is settled.',
  'operation.hang.offer': 'Offer it up with its underside {underside:signed} from the line.',
  'operation.hang.offer.unknown': 'Offer it up to its line.',
  'operation.hang.room': 'Hooking on needs {needed} over it; there is {there}.',
  'operation.hang.room.unknown': 'Whether there is room over it to hook on is not known yet. Measure first.',
  'operation.hang.wind-down':
    'Hooking on needs {needed} over it, and there is {there}. Wind its height screws down first, all the way: {down}.',
  'operation.hang.wind-up': 'It then hooks on that much lower. Wind it up again while you level it.',
  'operation.hang.no-room': 'Hooking on needs {needed} over it, and there is only {there}. Do not start.',
  'operation.hang.hooked-is-not-secured': 'Keep hold of it: hooked is not secured.',
  'operation.hang.held-until-screwed': 'Keep hold of it until it is screwed home.',

  'operation.level-hung.title': 'Level {unit}',
  'operation.level-hung.underside': 'Bring its underside to {underside:signed} from the line.',
  'operation.level-hung.underside.unknown': 'Bring its underside to its line.',
  'operation.level-hung.height-screw.not-said':
    'Try which screw raises it, a little at a time: nobody has said.',
  'operation.level-hung.height-screw.not-said.unknown':
    'Try which screw raises it, a little at a time: nobody has said.',
  'operation.level-hung.height-screw.upper': 'Turn the upper screw of each hanger: {perTurn}.',
  'operation.level-hung.height-screw.upper.unknown':
    'Turn the upper screw of each hanger, a little at a time.',
  'operation.level-hung.height-screw.lower': 'Turn the lower screw of each hanger: {perTurn}.',
  'operation.level-hung.height-screw.lower.unknown':
    'Turn the lower screw of each hanger, a little at a time.',
  'operation.level-hung.height-screw.front': 'Turn the front screw of each hanger: {perTurn}.',
  'operation.level-hung.height-screw.front.unknown':
    'Turn the front screw of each hanger, a little at a time.',
  'operation.level-hung.height-screw.inner': 'Turn the inner screw of each hanger: {perTurn}.',
  'operation.level-hung.height-screw.inner.unknown':
    'Turn the inner screw of each hanger, a little at a time.',
  'operation.level-hung.shim': 'Shim behind it until it stands plumb.',
  'operation.level-hung.where-the-level-lies':
    'Lay the level inside along the front edge of the bottom panel, then hold it upright against the side.',
  'operation.level-hung.bear':
    'Push packing in at the bottom, behind the places of its last screws, with a strip of wood and not with fingers, so that it bears on the wall.',
  'operation.level-hung.hold': 'Keep hold of it: hooked is not secured.',
  'operation.level-hung.hold.two':
    'One of you keeps hold of it, standing beside it with both hands under its front edge; the other turns, packs and measures. A padded prop under it rests the arms; it does not take their place. Hooked is not secured.',
  'operation.level-hung.hold-until-screwed': 'Keep hold of it until it is screwed home.',

  'operation.lock.title': 'Lock {unit} on',
  'operation.lock.draw-in':
    'Turn the draw-in screws until it bears on the packing, then check the level again.',
  'operation.lock.anti-lift': 'Turn the lock of each hanger that keeps it from being lifted off.',
  'operation.lock.no-anti-lift': 'It has no lock against being lifted off: the last screws must hold it.',
  'operation.lock.anti-lift-not-said':
    'Look for a lock against being lifted off on each hanger, and turn it if there is one.',
  'operation.lock.hold': 'Keep hold of {unit}: it is not secured yet.',
  'operation.lock.hold.two':
    'The one who holds {unit} holds on: it is not secured yet, and what comes next follows at once.',
  'operation.lock.let-go': 'Let go of {unit} only now.',

  'operation.second-fix.title': 'Screw {unit} to the timber',
  'operation.second-fix.wall-not-known':
    'What this wall is made of is not known. Settle that before anything hangs on it.',
  'operation.second-fix.no-hole':
    'No timber has been found for it yet. Keep hold of it; do not let go before there is.',
  'operation.second-fix.packing':
    'The screws go through {packing} of timber between its back and the wall, packed in when it was levelled. If it is not there, put it in first.',
  'operation.second-fix.packing.unknown':
    'The screws go through timber between its back and the wall, packed in when it was levelled. If it is not there, put it in first.',
  'operation.second-fix.one-holds':
    'One of you keeps hold of {unit} and gives no hand with the drill; the other drills and screws.',
  'operation.second-fix.two-at-least':
    'Two screws at least go into studs or let-in timber. Board alone never carries.',
  'operation.second-fix.one-only': 'One screw is not enough: find timber for a second before you let go.',
  'operation.second-fix.into-wall': 'Screw through the rail into the wall.',
  'operation.second-fix.let-go':
    'With both hands still under it, push up at its front edge and pull. Let go of {unit} only when it stays, and is screwed home.',
  'operation.screw-back.title': 'Screw {unit} back to the wall',

  'operation.join.title': 'Join {left} and {right}',
  'operation.join.clamp':
    'Clamp {left} and {right} together at top and bottom, front edges flush. Clamp before you drill.',
  'operation.join.pilot':
    'Drill a 3 mm pilot behind the front edge, clear of hinges and runners, through the first side and about 4 mm into the next.',
  'operation.join.screw': 'Join them with {screw} screws; the two sides are {both} together.',
  'operation.join.screw.unknown':
    'Join them with screws shorter than both sides are together. Measure both sides first: a screw must not come through.',
  'operation.join.screw-shorter':
    'The two sides are {both} together: use a screw at least 2 mm shorter than that.',
  'operation.join.where-the-level-lies':
    'Lay the level across both along the front edge, and check it again.',
}
