/** What is read at each step: what to do, what to check, what to beware of, what each figure is measured from. */
export const operationsWords = {
  // ------------------------------------------------------------------ before the work
  'operation.check-delivery.title': 'Check the delivery',
  'operation.check-delivery.count': 'Count the units ({count}) against the list, one box at a time.',
  'operation.check-delivery.hand': 'Open {units} and compare the hand with the plan.',
  'operation.check-delivery.damage':
    'Hold a lamp low along faces and edges, and note damage while it can still be reported.',
  'operation.check-delivery.unseen': 'Not seen yet: {units}. Look for these first.',
  'operation.check-delivery.sheets':
    'Put the sheets of {appliances} aside and read their least and greatest sizes.',

  'operation.isolate.title': 'Make electricity, water and gas safe',
  'operation.isolate.electricity':
    'Have the circuits in and behind these walls switched off, locked off, and proved dead by someone competent with the right instrument.',
  'operation.isolate.tester': 'Do not rely on a plug-in tester: it proves nothing about a buried cable.',
  'operation.isolate.water': 'Turn the water off at the stop valve and open a tap to see that it is off.',
  'operation.isolate.gas': 'Have the gas shut off; touch no gas fitting yourself.',
  'operation.isolate.gas-not-known':
    'Find out whether there is gas in the house. If there is, have it shut off; touch no gas fitting yourself.',
  'operation.isolate.note': 'Leave a note at the board so that nobody switches it on again.',

  'operation.asbestos-check.title': 'Stop for asbestos',
  'operation.asbestos-check.year':
    'This house was built in {year}. Homes built before {limit} may hold asbestos.',
  'operation.asbestos-check.year-not-known':
    'Nobody has said when this house was built. Treat it as built before {limit}: it may hold asbestos.',
  'operation.asbestos-check.stop':
    'Stop before any strip-out and before the first hole. Textured coatings, floor tiles, boxing boards and flue pipes may hold it.',
  'operation.asbestos-check.sample':
    'Have it sampled by a competent firm. Take, sand, drill and break nothing yourself.',

  'operation.call-trade.title': 'Book the gas engineer',
  'operation.call-trade.book': 'Book a registered gas engineer for {appliances}.',
  'operation.call-trade.nobody-else': 'Leave all work on gas to them.',
  'operation.call-trade.clearances': 'Ask them to confirm the clearances on the appliance’s own sheet.',

  'operation.trace.title': 'Trace {wall}',
  'operation.trace.go-over':
    'Go over the whole of {wall} with a detector for cables, pipes and metal, most carefully along its bands ({bands}) and round its holes ({holes}).',
  'operation.trace.traced-before':
    'The survey says {wall} was traced whole. See that its marks are still on it, along its bands ({bands}) and round its holes ({holes}).',
  'operation.trace.depth':
    'The deepest bit or tip goes {depth} in from the finished face: trace to that depth.',
  'operation.trace.depth.unknown':
    'How deep the holes will go is not known yet. Settle that first, then trace to that depth.',
  'operation.trace.other-face':
    'Look at the other face of the wall too: its sockets and switches make bands on this one.',
  'operation.trace.fooled':
    'Mark what it finds. Foil, mesh, damp and steel can fool it: silence proves nothing.',
  'operation.trace.live-and-dead':
    'Trace once while the circuits are live, then have them proved dead before the drill comes out.',

  // ------------------------------------------------------------------ survey
  'operation.strike.title': 'Strike the line',
  'operation.strike.reverse':
    'Turn the laser round between two facing walls: over 5 m it may be out by 1 mm.',
  'operation.strike.round':
    'Strike one level line on every wall that gets units ({walls}), and close it where it began.',
  'operation.strike.height': 'Set it {above} above the highest floor, so that the figures here hold.',
  'operation.strike.height.unknown': 'Set it about a metre above the floor, then read the floor from it.',
  'operation.strike.zero':
    'This line is height 0. Measure everything from it, up (+) or down (−), never from the floor.',

  'operation.read-floor.title': 'Read the floor',
  'operation.read-floor.read':
    'Read the drop from the line to the floor at the places of the survey ({count}), front and back of each run.',
  'operation.read-floor.sign': 'Mind the sign: a bigger drop is a lower floor.',
  'operation.read-floor.high-point': 'The highest floor that counts is at {where}, {drop} below the line.',
  'operation.read-floor.high-point.unknown':
    'The highest floor is not known yet: read at every foot and bay, and enter what you read.',
  'operation.read-floor.fall': 'Under the units the floor falls {fall} in all.',
  'operation.read-floor.fall.unknown': 'How much the floor falls is not known yet.',
  'operation.read-floor.compare': 'Where a drop is more than 1 mm off the survey, enter it before you go on.',

  // ------------------------------------------------------------------ setting out
  'operation.set-out-heights.title': 'Mark the heights on {wall}',
  'operation.set-out-heights.from-the-line':
    'Measure each height from the line: + is above it, − below. Mark it at both ends and check with the laser.',
  'operation.set-out-heights.base-underside':
    'Underside of the base units {height:signed} from the line: legs and plinth go below it.',
  'operation.set-out-heights.base-underside.unknown': 'Underside of the base units: not known yet.',
  'operation.set-out-heights.base-top': 'Top of the base units {height:signed} from the line.',
  'operation.set-out-heights.base-top.unknown': 'Top of the base units: not known yet.',
  'operation.set-out-heights.worktop-top': 'Top of the worktop {height:signed} from the line.',
  'operation.set-out-heights.worktop-top.unknown': 'Top of the worktop: not known yet.',
  'operation.set-out-heights.wall-underside':
    'Underside of the wall units {height:signed} from the line: it allows for the worktop.',
  'operation.set-out-heights.wall-underside.unknown': 'Underside of the wall units: not known yet.',
  'operation.set-out-heights.wall-top': 'Top of the wall units {height:signed} from the line.',
  'operation.set-out-heights.wall-top.unknown': 'Top of the wall units: not known yet.',
  'operation.set-out-heights.tall-underside': 'Underside of the tall units {height:signed} from the line.',
  'operation.set-out-heights.tall-underside.unknown': 'Underside of the tall units: not known yet.',
  'operation.set-out-heights.tall-top': 'Top of the tall units {height:signed} from the line.',
  'operation.set-out-heights.tall-top.unknown': 'Top of the tall units: not known yet.',
  'operation.set-out-heights.plate': 'Hook-on edge of the plates {height:signed} from the line.',
  'operation.set-out-heights.plate.unknown': 'Hook-on edge of the plates: not known yet.',
  'operation.set-out-heights.rail': 'Hook-on edge of the rail {height:signed} from the line.',
  'operation.set-out-heights.rail.unknown': 'Hook-on edge of the rail: not known yet.',
  'operation.set-out-heights.bracket': 'Holes of the L brackets {height:signed} from the line.',
  'operation.set-out-heights.bracket.unknown': 'Holes of the L brackets: not known yet.',

  'operation.set-out-widths.title': 'Mark the widths on {wall}',
  'operation.set-out-widths.storey-rod':
    'Mark both sides of {units} on a storey rod, then on the wall and the floor.',
  'operation.set-out-widths.first':
    'Start with {unit}: {left} to {right} from the left corner, as you face the wall.',
  'operation.set-out-widths.first.unknown': 'Where {unit} stands is not known yet: measure its place first.',
  'operation.set-out-widths.plumb': 'Measure along the line, then plumb each mark up and down.',
  'operation.set-out-widths.sum': 'Add the marks up: they must come to the run you measured.',

  'operation.find-studs.title': 'Find the studs in {wall}',
  'operation.find-studs.both-edges':
    'Find both edges of each stud. One beep is not a stud; a magnet finds its screws.',
  'operation.find-studs.expected': 'Mark the centres of the studs the survey has here ({count}).',
  'operation.find-studs.none-yet':
    'The survey has no stud here yet. Find them, and enter them before you go on.',
  'operation.find-studs.unsure': 'Not sure yet: {studs}. Prove these before anything is screwed to them.',
  'operation.find-studs.usual-spacing':
    'Studs are usually 400 mm apart and 40 to 50 mm wide, but the spacing varies: prove it over three.',
  'operation.find-studs.no-drill': 'Do not drill to find a stud.',

  'operation.mark-holes.title': 'Mark the holes on {wall}',
  'operation.mark-holes.count':
    'Mark the holes on {wall} ({count}), each with its number from the wall drawing.',
  'operation.mark-holes.from': 'Measure along from the left corner, and up or down from the line.',
  'operation.mark-holes.refused': 'Leave out the refused ones ({refused}). Cross their places off.',
  'operation.mark-holes.ask': 'Something is still to be settled for {count} of them: do not drill those yet.',
  'operation.mark-holes.in-timber': 'A mark may be 5 mm out, and must lie 12 mm or more inside the timber.',
  'operation.mark-holes.tolerance': 'A mark may be 5 mm out and no more.',

  'operation.fit-nogging.title.nogging': 'Fit a nogging in {wall}',
  'operation.fit-nogging.title.pattress': 'Fit a pattress on {wall}',
  'operation.fit-nogging.needed-for': 'The fixings of {unit} find no timber here.',
  'operation.fit-nogging.place':
    'Let it in from {from} to {to} from the left corner, its middle {height:signed} from the line.',
  'operation.fit-nogging.place.unknown': 'Where it goes is not known yet: measure that first.',
  'operation.fit-nogging.nogging': 'Screw it to the studs at both ends, its face flush with theirs.',
  'operation.fit-nogging.pattress': 'Screw the board to every stud it crosses.',
  'operation.fit-nogging.record': 'Photograph it, and write its height on the wall, before it is covered.',

  // ------------------------------------------------------------------ assembly
  'operation.assemble.title': 'Assemble {unit}',
  'operation.assemble.not-said': 'Nobody has said how {unit} came. If it came built, only check it.',
  'operation.assemble.flat-floor': 'Put {unit} together on a clean, flat floor near its place.',
  'operation.assemble.lying': 'Put {unit} together lying on its back, near where it will be stood up.',
  'operation.assemble.square':
    'Square it before the back is fixed: both diagonals {diagonal}, and equal within 2 mm.',
  'operation.assemble.square.unknown':
    'Square it before the back is fixed: both diagonals equal within 2 mm.',
  'operation.assemble.stripped': 'Leave doors, drawers and shelves off: so it weighs {mass}.',
  'operation.assemble.stripped.unknown':
    'Leave doors, drawers and shelves off. Weigh it: nobody knows its mass yet.',
  'operation.assemble.not-too-tight': 'Do not over-tighten: chipboard bursts.',

  'operation.set-legs.title': 'Fit and set the legs of {unit}',
  'operation.set-legs.fit': 'Fit the legs ({count}) and label each with its place.',
  'operation.set-legs.wind-in': 'Wind them right in: the unit is stood up on blocks, not on its legs.',
  'operation.set-legs.wind': 'Wind leg {foot} to {extension}, floor to underside.',
  'operation.set-legs.wind.unknown': 'Leg {foot}: how far is not known yet. Read the floor at this foot.',
  'operation.set-legs.later': 'When it stands, leg {foot} will come to {extension}.',
  'operation.set-legs.later.unknown':
    'How far leg {foot} winds out is not known yet. Read the floor at this foot.',
  'operation.set-legs.out-of-reach': 'Leg {foot} does not reach this figure. Stop and settle that first.',

  'operation.fit-hangers.title': 'Fit the hangers of {unit}',
  'operation.fit-hangers.corners':
    'Fit one hanger in each top corner, its centre {hangerIn} in from the side of the unit.',
  'operation.fit-hangers.corners.unknown':
    'Fit one hanger in each top corner, as far in from the side as its maker says. Write that figure down.',
  'operation.fit-hangers.mid-travel': 'Set both screws of each hanger to mid travel.',
  'operation.fit-hangers.height-screw.not-said':
    'Turn each screw a little and see which one moves the hook up: nobody has said.',
  'operation.fit-hangers.height-screw.upper': 'The upper screw sets the height, the other draws the unit in.',
  'operation.fit-hangers.height-screw.lower': 'The lower screw sets the height, the other draws the unit in.',
  'operation.fit-hangers.height-screw.front': 'The front screw sets the height, the other draws the unit in.',
  'operation.fit-hangers.height-screw.inner': 'The inner screw sets the height, the other draws the unit in.',

  // ------------------------------------------------------------------ talls
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

  // ------------------------------------------------------------------ drilling, plates, rails
  'operation.drill.one-hole': 'Drill one hole {along} from the left corner, {height:signed} from the line.',
  'operation.drill.one-hole.unknown': 'Drill one hole at its mark.',
  'operation.drill.level-holes': 'Drill {count} holes at their marks, all {height:signed} from the line.',
  'operation.drill.level-holes.unknown': 'Drill {count} holes at their marks.',
  'operation.drill.holes-at-marks': 'Drill {count} holes, each at its own mark.',
  'operation.drill.plug':
    'The bit suits the plug: {bit}. Go {depth} in from the finished face, no deeper than needed.',
  'operation.drill.plug.unknown':
    'The bit suits the plug. Drill no deeper than needed; bit or depth is not known yet, so read the packet first.',
  'operation.drill.timber':
    'Pilot {bit} into the timber, {depth} in from the finished face, no deeper than needed.',
  'operation.drill.timber.unknown':
    'Drill a pilot into the timber, no deeper than needed; bit or depth is not known yet, so read the packet first.',
  'operation.drill.ask-first':
    'Something is still to be settled for one of these holes. Settle it before you drill.',

  'operation.drill-plates.title': 'Drill for the plates of {unit}',
  'operation.drill-plates.title.cleat': 'Drill for the cleat of {unit}',
  'operation.drill-plates.no-hole': 'There is no hole here yet that may be drilled. Stop, and see why.',
  'operation.drill-plates.two-plates': 'They are for two plates, one behind each top corner.',
  'operation.drill.no-deeper': 'Set the depth stop, and let the dust fall into a vacuum.',

  'operation.fix-plates.title': 'Fix the plates of {unit}',
  'operation.fix-plates.title.cleat': 'Fix the cleat of {unit}',
  'operation.fix-plates.screw': 'Screw both plates hand-tight, level them to each other, then tighten.',
  'operation.fix-plates.edge':
    'Their hook-on edge lies {below} below the unit’s top, which comes {top:signed} from the line.',
  'operation.fix-plates.edge.unknown':
    'Their hook-on edge goes to its line. How far below the unit’s top is not known yet.',
  'operation.fix-plates.where-the-level-lies': 'Lay the level across both hook-on edges.',

  'operation.drill-rail.title': 'Drill for the rail on {wall}',
  'operation.drill-rail.no-hole': 'There is no hole here yet that may be drilled. Stop, and see why.',

  'operation.fix-rail.title': 'Fix the rail on {wall}',
  'operation.fix-rail.ends': 'Cut the rail to run from {from} to {to} from the left corner of {wall}.',
  'operation.fix-rail.ends.unknown': 'How long the rail is on {wall} is not known yet.',
  'operation.fix-rail.edge': 'Its hook-on edge goes {edge:signed} from the line.',
  'operation.fix-rail.edge.unknown': 'How high its hook-on edge goes is not known yet.',
  'operation.fix-rail.one-end': 'Screw one end, lay the level along the edge, then screw the rest.',
  'operation.fix-rail.carries': 'It carries {units}.',

  // ------------------------------------------------------------------ hanging
  'operation.hang.title': 'Hang {unit}',
  'operation.hang.lift.alone': 'Lift {unit}, {mass}, with both hands under it.',
  'operation.hang.lift.alone.unknown': 'Weigh {unit} before you lift it: nobody knows its mass yet.',
  'operation.hang.lift.two': 'Two of you lift {unit}, {mass} stripped, one at each end.',
  'operation.hang.lift.two.unknown': 'Two of you lift {unit}. Weigh it first: nobody knows its mass yet.',
  'operation.hang.lift.three': 'Three of you lift {unit}, {mass} stripped.',
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
  'operation.hang.hook':
    'Raise it {lift} above its place, move it in to the wall and lower it onto the hooks.',
  'operation.hang.hook.unknown':
    'Raise it above its place, move it in to the wall and lower it onto the hooks.',
  'operation.hang.not-said': 'Nobody has said what {unit} hangs by. Do not start before that is settled.',
  'operation.hang.offer': 'Offer it up with its underside {underside:signed} from the line.',
  'operation.hang.offer.unknown': 'Offer it up to its line.',
  'operation.hang.room': 'Hooking on needs {needed} over it; there is {there}.',
  'operation.hang.room.unknown': 'Whether there is room over it to hook on is not known yet. Measure first.',
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
  'operation.level-hung.bear': 'Pack it at the bottom so that it bears on the wall.',
  'operation.level-hung.hold': 'Keep hold of it: hooked is not secured.',

  'operation.lock.title': 'Lock {unit} on',
  'operation.lock.draw-in':
    'Turn the draw-in screws until it bears on the packing, then check the level again.',
  'operation.lock.anti-lift': 'Set the lock that keeps it from being lifted off.',
  'operation.lock.no-anti-lift': 'It has no lock against being lifted off: the last screws must hold it.',
  'operation.lock.anti-lift-not-said':
    'Look for a lock against being lifted off, and set it if there is one.',
  'operation.lock.hold': 'Keep hold of {unit}: it is not secured yet.',
  'operation.lock.let-go': 'Let go of {unit} only now.',

  'operation.second-fix.title': 'Screw {unit} to the timber',
  'operation.second-fix.wall-not-known':
    'What this wall is made of is not known. Settle that before anything hangs on it.',
  'operation.second-fix.no-hole':
    'No timber has been found for it yet. Keep hold of it; do not let go before there is.',
  'operation.second-fix.packing':
    'Pack {packing} of timber between its back and the wall first, and screw through that.',
  'operation.second-fix.packing.unknown':
    'Pack timber between its back and the wall first, and screw through that.',
  'operation.second-fix.two-at-least':
    'Screw through the rail: two screws at least into studs or let-in timber. Board alone never carries.',
  'operation.second-fix.one-only':
    'Screw through the rail. One screw is not enough: find timber for a second before you let go.',
  'operation.second-fix.into-wall': 'Screw through the rail into the wall.',
  'operation.second-fix.let-go': 'Let go of {unit} only when it is screwed home.',
  'operation.screw-back.title': 'Screw {unit} back to the wall',

  'operation.join.title': 'Join {left} and {right}',
  'operation.join.clamp': 'Clamp {left} and {right} together, front edges flush. Clamp before you drill.',
  'operation.join.pilot':
    'Drill a 3 mm pilot between the hinge holes, through the first side and about 4 mm into the next.',
  'operation.join.screw': 'Join them with 25 mm screws; the two sides are {both} together.',
  'operation.join.screw.unknown':
    'Join them with 25 mm screws. Measure both sides first: a screw must not come through.',
  'operation.join.screw-shorter':
    'The two sides are {both} together: use a screw at least 2 mm shorter than that.',
  'operation.join.where-the-level-lies':
    'Lay the level across both along the front edge, and check it again.',

  // ------------------------------------------------------------------ bases
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

  // ------------------------------------------------------------------ panels, hold point, worktops
  'operation.panel.title.end-panel': 'Fit end panel {part}',
  'operation.panel.title.filler': 'Fit filler {part}',
  'operation.panel.title.scribe': 'Fit scribe {part}',
  'operation.panel.at': 'It belongs to {units}.',
  'operation.panel.width': 'It takes {width} along the wall.',
  'operation.panel.width.unknown': 'Measure how much it takes along the wall.',
  'operation.panel.scribe': 'Hold it plumb, scribe it to wall and floor, and plane to the line.',
  'operation.panel.fix': 'Clamp it, then screw from inside the unit.',

  'operation.prove.title': 'Stop and prove the room',
  'operation.prove.secured': 'Check that every unit ({count}) is secured, and joined to its neighbour.',
  'operation.prove.tops': 'Hold the laser to the tops of the bases: {top:signed} from the line, within 1 mm.',
  'operation.prove.tops.unknown': 'Hold the laser to the tops of the bases: all one height, within 1 mm.',
  'operation.prove.bays':
    'Measure {bays} at front and back: never narrower than its figure, at most 2 mm wider.',
  'operation.prove.hold':
    'Go on only when every check is answered: nothing can be put right under a worktop.',

  'operation.worktop.title': 'Fit worktop {worktop}',
  'operation.worktop.cut': 'Cut it to lie over {units}, the joints away from appliance bays.',
  'operation.worktop.stone':
    'The stone fitters template and lay it over {units}. Move no base after they have measured.',
  'operation.worktop.cutouts':
    'Make the cut-outs ({count}) on trestles, measured from the unit below, and seal the raw edges.',
  'operation.worktop.joints':
    'Make the joints ({count}), each at half the corner’s measured angle; try it on offcuts first.',
  'operation.worktop.lift': 'Two of you lift it, {mass}, on edge.',
  'operation.worktop.lift.unknown': 'Two of you lift it on edge. Weigh it first: nobody knows its mass yet.',
  'operation.worktop.height': 'Its top comes {height:signed} from the line; it is {thickness} thick.',
  'operation.worktop.height.unknown': 'Check the height of its top against its line.',

  // ------------------------------------------------------------------ connect, finish
  'operation.connect.title': 'Set in and connect {appliance}',
  'operation.connect.into': 'Set {appliance} into {bay}, with the clearances of its own sheet.',
  'operation.connect.set': 'Set {appliance} in its place, with the clearances of its own sheet.',
  'operation.connect.fuel-not-said':
    'Nobody has said what {appliance} runs on. If it is gas, leave it to the gas engineer.',
  'operation.connect.by.gas-engineer':
    'A registered gas engineer connects and tests {appliance}. Nobody else does.',
  'operation.connect.by.electrician': 'A competent electrician connects and tests {appliance}.',
  'operation.connect.by.plumber': 'A plumber, or someone who can do it right, connects {appliance}.',
  'operation.connect.by.anyone': 'Plug {appliance} in as its sheet says.',
  'operation.connect.vents': 'Keep the vents at plinth and top open, as its sheet asks.',
  'operation.connect.test': 'Try it before doors and plinth cover it.',
  'operation.connect.test-water': 'Fill it, pull the plug, and feel every joint with dry tissue.',

  'operation.hang-fronts.title': 'Hang the fronts of {unit}',
  'operation.hang-fronts.doors': 'Hang the doors ({count}).',
  'operation.hang-fronts.drawers': 'Fit the drawers ({count}) and their fronts.',
  'operation.hang-fronts.gaps': 'Set the gaps to {gap}, alike all along.',
  'operation.hang-fronts.handles': 'Drill for handles with a jig, and a backing block behind.',
  'operation.hang-fronts.flap': 'Hold flaps while their springs are set.',

  'operation.plinth.title': 'Fit plinth {part}',
  'operation.plinth.under': 'It runs under {units}.',
  'operation.plinth.height': 'The board is {height} high; cut it down where the floor rises.',
  'operation.plinth.height.unknown': 'Measure the board, and cut it down where the floor rises.',
  'operation.plinth.rip': 'Scribe it to the finished floor, gap 2 mm at most.',
  'operation.plinth.clip': 'Clip it to the legs so that it comes off again.',

  'operation.finish.title.cornice': 'Fit cornice {part}',
  'operation.finish.title.pelmet': 'Fit pelmet {part}',
  'operation.finish.title.upstand': 'Fit upstand {part}',
  'operation.finish.title.splashback': 'Fit splashback {part}',
  'operation.finish.at': 'It belongs to {units}.',
  'operation.finish.cornice': 'Measure it in place and check the room up to the ceiling at both ends.',
  'operation.finish.pelmet': 'Measure it in place and line it up with the doors.',
  'operation.finish.upstand': 'Bed it on the worktop, against the wall.',
  'operation.finish.splashback': 'Measure it with the worktop in place; behind a hob it must be heat-rated.',
  'operation.finish.mitre': 'Cut the mitres on offcuts first, then screw from inside.',
  'operation.finish.seal': 'Seal it to the worktop when both are dry and clean.',

  'operation.snag.title': 'Snag and hand over',
  'operation.snag.walk': 'Walk round every unit ({count}): doors, drawers, gaps, handles.',
  'operation.snag.seal': 'Seal what is to be sealed, and keep it dry for a day.',
  'operation.snag.map': 'Hand over the wall drawings with every hole on them ({holes}).',
  'operation.snag.hand-over':
    'Hand over sheets, spare parts, and where water, gas and electricity are shut off.',

  // ------------------------------------------------------------------ figures at the step
  'label.units-to-count': 'units to count',
  'label.heaviest-unit': 'heaviest unit, whole',
  'label.deepest-hole': 'deepest bit or tip, from the finished face',
  'label.line-above-high-point': 'the line above the highest floor',
  'label.high-point': 'highest floor, at {where}, from the line (− is below)',
  'label.floor-fall': 'fall of the floor, highest to lowest',
  'label.height.base-underside': 'underside of the bases, from the line (− is below)',
  'label.height.base-top': 'top of the bases, from the line (− is below)',
  'label.height.worktop-top': 'top of the worktop, from the line (− is below)',
  'label.height.wall-underside': 'underside of the wall units, from the line (− is below)',
  'label.height.wall-top': 'top of the wall units, from the line (− is below)',
  'label.height.tall-underside': 'underside of the talls, from the line (− is below)',
  'label.height.tall-top': 'top of the talls, from the line (− is below)',
  'label.height.plate': 'hook-on edge of the plates, from the line (− is below)',
  'label.height.rail': 'hook-on edge of the rail, from the line (− is below)',
  'label.height.bracket': 'bracket holes, from the line (− is below)',
  'label.left-side': 'left side of {unit}, from the left corner of {wall}',
  'label.right-side': 'right side of {unit}, from the left corner of {wall}',
  'label.stud-centre': 'centre of stud {stud}, from the left corner of {wall}',
  'label.hole-along': 'hole {hole}, from the left corner of {wall}',
  'label.hole-height': 'hole {hole}, from the line (− is below)',
  'label.hole-depth': 'hole {hole}, depth from the finished face',
  'label.timber-from': 'left end of the timber, from the left corner of {wall}',
  'label.timber-to': 'right end of the timber, from the left corner of {wall}',
  'label.timber-height': 'middle of the timber, from the line (− is below)',
  'label.diagonal': 'diagonal of {unit}, corner to corner of its front',
  'label.mass-stripped': '{unit} without doors, drawers and shelves',
  'label.leg-extension': 'leg {foot}, floor to underside of the unit',
  'label.leg-turns': 'leg {foot}, turns from how it came',
  'label.hanger-in': 'centre of the hanger, in from the side of {unit}',
  'label.plate-below-top': 'hook-on edge, below the top of {unit}',
  'label.end-lift': 'at the head end when you begin to lift',
  'label.stand-up-needed': 'height it sweeps over the floor on the way up',
  'label.stand-up-ceiling': 'lowest ceiling over that sweep, from the floor',
  'label.underside': 'underside of {unit}, from the line (− is below)',
  'label.top': 'top of {unit}, from the line (− is below)',
  'label.hook-on-room': 'room over the top for hooking on',
  'label.rated-per-hanger': 'the maker’s stated load for one hanger',
  'label.packing': 'timber packing between back and wall',
  'label.both-sides': 'both sides together',
  'label.rail-edge': 'hook-on edge of the rail, from the line (− is below)',
  'label.rail-from': 'left end of the rail, from the left corner of {wall}',
  'label.rail-to': 'right end of the rail, from the left corner of {wall}',
  'label.part-width': '{part}, along the wall',
  'label.part-height': '{part}, height',
  'label.plinth-height': '{part}, height of the board',
  'label.plinth-set-back': '{part}, back from the front of the units',
  'label.bay-width': '{bay}, clear width',
  'label.worktop-thickness': 'thickness of the worktop',
  'label.worktop-mass': 'mass of the worktop',
  'label.appliance-mass': 'mass of the appliance',

  // ------------------------------------------------------------------ checks
  'check.delivery-complete': 'Is every box on the list here?',
  'check.no-damage': 'Is everything undamaged, or reported?',
  'check.proved-dead': 'Were the circuits proved dead, by whom and with what?',
  'check.water-off': 'Does the tap run dry?',
  'check.gas-off': 'Is the gas shut off, or is there none?',
  'check.asbestos-result': 'Is there a written result for this room?',
  'check.gas-booked': 'Who comes, and when?',
  'check.wall-traced': 'Has the whole of {wall} been traced, to this depth?',
  'check.laser-turned-round': 'How far is the laser out over 5 m when it is turned round?',
  'check.line-closes': 'By how much does the line miss its own start?',
  'check.drop-at-high-point': 'What is the drop at {where}?',
  'check.marks-at-both-ends': 'Are the marks at both ends of {wall} on the laser?',
  'check.marks-add-up': 'By how much do the marks on {wall} miss the measured run?',
  'check.stud-found': 'Where is the centre of stud {stud}?',
  'check.holes-marked': 'How far is the worst mark on {wall} from its place?',
  'check.timber-flush': 'How far is its face off the face of the studs?',
  'check.diagonals-equal': 'By how much do the diagonals of {unit} differ?',
  'check.leg-set': 'How long is leg {foot}?',
  'check.leg-wound-in': 'How long is leg {foot}, wound in?',
  'check.hangers-alike': 'Are both hangers of {unit} at mid travel and alike?',
  'check.floor-clear': 'Is the floor clear over its whole length?',
  'check.side-on-mark': 'Where is the left side of {unit}, from the left corner?',
  'check.tall-plumb-side': 'How far is {unit} out of plumb sideways, in a metre?',
  'check.tall-plumb-front': 'How far is {unit} out of plumb front to back, in a metre?',
  'check.top-to-line': 'How high is the top of {unit}, from the line?',
  'check.still-plumb': 'How far is {unit} out of plumb after the last screw, in a metre?',
  'check.pull-by-hand': 'Does {unit} stay still when you pull at it by hand?',
  'check.holes-on-marks': 'How far is the worst hole for {unit} from its mark?',
  'check.plates-level': 'How far are the plates of {unit} out of level?',
  'check.plates-firm': 'Are both plates of {unit} tight, and neither turns?',
  'check.rail-holes-on-marks': 'How far is the worst hole from its mark?',
  'check.rail-level': 'How far is the rail out of level over its length?',
  'check.rail-edge-to-line': 'How high is its hook-on edge, from the line?',
  'check.both-hooks-in': 'Are both hooks of {unit} right over their plates?',
  'check.underside-to-line': 'How high is the underside of {unit}, from the line?',
  'check.wall-unit-plumb': 'How far is the front of {unit} out of plumb over its height?',
  'check.does-not-lift-off': 'Does {unit} stay on when you push up at its front edge?',
  'check.still-level': 'How far is {unit} out of level after the last screw?',
  'check.fronts-flush': 'How far are the front edges of {left} and {right} out of flush?',
  'check.no-screw-through': 'Has no screw come through a side?',
  'check.level-front-to-back': 'How far is {unit} out of level, front to back?',
  'check.scribe-gap': 'How wide is the widest gap at {part}?',
  'check.plinth-gap': 'How wide is the widest gap under {part}?',
  'check.sits-tight': 'Does {part} sit tight all along?',
  'check.lines-through': 'Do the lines of {part} run through at the mitres?',
  'check.bay-width': 'How wide is {bay}, at front and back?',
  'check.all-secured': 'Is every unit secured and joined?',
  'check.tops-to-line': 'How high are the tops of the bases, from the line?',
  'check.run-straight': 'How far are the front edges off a straight line, in 2 m?',
  'check.worktop-level': 'How far is {worktop} out of level, in 3 m?',
  'check.overhang': 'By how much does the overhang of {worktop} vary?',
  'check.worktop-height': 'How high is the top of {worktop}, from the line?',
  'check.works': 'Does {appliance} work?',
  'check.no-leak': 'Is every joint of {appliance} dry?',
  'check.gas-certificate': 'Is the gas engineer’s certificate here?',
  'check.door-gap': 'How wide are the gaps at {unit}?',
  'check.handle-line': 'How far is the handle line of {unit} out?',
  'check.snag-doors': 'Does every door and drawer run and close?',
  'check.snag-papers': 'Are drawings, sheets and certificates handed over?',

  // ------------------------------------------------------------------ cautions
  'caution.boxes': 'Heavy boxes: safety shoes, and two of you for what is too much for one.',
  'caution.straps': 'Straps and blades cut: cut away from you.',
  'caution.disconnect': 'Disconnect before you work.',
  'caution.not-proved-dead': 'Off is not dead until it is proved.',
  'caution.leave-it-off': 'Leave switches and valves as they are while the work goes on.',
  'caution.asbestos': 'Leave suspect materials alone.',
  'caution.asbestos-dust':
    'Asbestos dust cannot be seen. If something broke, leave the room and shut the door.',
  'caution.gas-fittings': 'Touch no gas pipe, valve or cap.',
  'caution.smell-of-gas':
    'If you smell gas: no flame, no switch, open the windows, get out and call the gas emergency line.',
  'caution.bands-are-not-cables': 'Bands show where cables should be. Cables may lie elsewhere.',
  'caution.never-drill-to-find-out': 'Never drill to find out what a wall is made of.',
  'caution.heated-floor': 'Pipes or mats may lie in the floor: drill no hole in it.',
  'caution.drill-cable':
    'A cable or pipe may lie where nothing shows it. If the bit meets something odd, stop.',
  'caution.eyes': 'Wear eye protection.',
  'caution.no-gloves-at-drill': 'No gloves, sleeves or loose hair at the drill.',
  'caution.silica-dust': 'Masonry dust holds silica: wear a respirator and extract at the hole.',
  'caution.dust': 'Wear a mask and extract at the hole.',
  'caution.hammer-noise': 'Wear ear protection. Rest from the hammer: it shakes the hands.',
  'caution.stepladder': 'Use a stepladder, never a stool or chair.',
  'caution.phone-off-the-steps': 'Read the telephone off the steps, not on them.',
  'caution.falling-unit': 'Nobody stands under it. Hooked is not secured: it can fall.',
  'caution.hands-behind-unit': 'Keep fingers out from behind it.',
  'caution.panels': 'Mind fingers between panels.',
  'caution.lying-unit': 'It lies in the way: keep the path to the door free.',
  'caution.tall-tips': 'It tips until it is restrained. Do not let go, open nothing, put nothing in.',
  'caution.feet': 'Wear safety shoes.',
  'caution.under-the-edge': 'Keep hands and feet from under the edge it turns on.',
  'caution.blades': 'Sharp edges and blades.',
  'caution.stop-here': 'Work stops here until every check is answered.',
  'caution.stone-dust': 'No dry cutting of stone: water on the blade, and a respirator.',
  'caution.worktop-dust': 'Worktop dust: respirator, and extraction on the tool.',
  'caution.router-noise': 'Wear ear protection.',
  'caution.no-gloves-at-router': 'No gloves or loose sleeves at the router and saw.',
  'caution.worktop-fingers': 'Set it down on bearers, not on fingers.',
  'caution.circuit-by-electrician': 'Fixed wiring is for a competent electrician. Alter no circuit.',
  'caution.wet-floor': 'Wipe up water at once.',
  'caution.appliance-sheet': 'Read its sheet first: it beats every default here.',
  'caution.flap-springs': 'Sprung flaps snap: keep fingers out of the arms.',

  // ------------------------------------------------------------------ tools
  'tool.delivery-list': 'delivery list',
  'tool.lamp': 'lamp',
  'tool.knife': 'knife with a guarded blade',
  'tool.camera': 'camera',
  'tool.proving-unit': 'voltage tester and proving unit',
  'tool.telephone': 'telephone',
  'tool.detector': 'cable, pipe and metal detector',
  'tool.laser': 'line laser or water level',
  'tool.tape': 'tape',
  'tool.pencil': 'pencil',
  'tool.storey-rod': 'storey rod',
  'tool.magnet': 'stud magnet',
  'tool.saw': 'fine saw',
  'tool.drill-driver': 'drill driver',
  'tool.hammer-drill': 'hammer drill with a depth stop',
  'tool.square': 'square',
  'tool.mallet': 'mallet',
  'tool.screwdriver': 'screwdriver',
  'tool.level': 'level, 600 mm',
  'tool.long-level': 'long level, 1 800 mm',
  'tool.blocks': 'blocks for standing it up',
  'tool.blankets': 'blankets',
  'tool.barrow': 'sack barrow',
  'tool.clamps': 'clamps',
  'tool.packers': 'packers',
  'tool.stepladder': 'stepladder',
  'tool.prop': 'batten or prop',
  'tool.lifter': 'lifter',
  'tool.string-line': 'string line',
  'tool.scribe-block': 'scribing block',
  'tool.plane': 'plane',
  'tool.router': 'router and jig',
  'tool.sealant-gun': 'sealant gun',
  'tool.handle-jig': 'handle jig and backing block',
  'tool.mitre-saw': 'mitre saw',
  'tool.trestles': 'trestles',
  'tool.vacuum': 'vacuum at the hole',

  // ------------------------------------------------------------------ findings
  'finding.asbestos-age':
    'This house was built in {year}. Homes built before {limit} may hold asbestos: stop before strip-out and before the first hole.',
  'finding.asbestos-age.year-not-known':
    'When this house was built is not known. Homes built before {limit} may hold asbestos: stop before strip-out and before the first hole.',
  'finding.asbestos-age.ask': 'A competent firm, by a sample.',
  'finding.isolate-first':
    'Before any drilling: electricity, water and gas off, and proved so. A plug-in tester proves nothing about a buried cable.',
  'finding.isolate-first.ask': 'Someone competent, with the right instrument.',
  'finding.gas-trade': 'Gas: {appliances} is for a registered gas engineer only. Book them early.',
  'finding.gas-trade.ask': 'A registered gas engineer.',
} as const
