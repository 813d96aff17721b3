/** Words of the work: before the work: delivery, making safe, tracing. */
export const beforeWords = {
  'operation.check-delivery.title': 'Check the delivery',
  'operation.check-delivery.count': 'Count the units ({count}) against the list, one box at a time.',
  'operation.check-delivery.hand': 'Open {units} and compare the hand with the plan.',
  'operation.check-delivery.too-heavy':
    'The heaviest unit weighs {mass} as it comes; the published figure for this crew is {filter}. Do not carry such a box whole: open it where it was set down and carry it in parts, or get more people.',
  'operation.check-delivery.damage':
    'Hold a lamp low along faces and edges, and note damage while it can still be reported.',
  'operation.check-delivery.unseen': 'Not seen yet: {units}. Look for these first.',
  'operation.check-delivery.missing':
    'Looked for and not there: {things}. Ask for them before the day is booked.',
  'operation.check-delivery.sheets':
    'Put the sheets of {appliances} aside and read their least and greatest sizes.',

  'operation.isolate.title': 'Turn off and prove off: electricity, water, gas',
  'operation.isolate.title.no-gas': 'Turn off and prove off: electricity and water',
  'operation.isolate.electricity':
    'Have the circuits in and behind these walls switched off, locked off, and proved dead by someone competent with the right instrument.',
  'operation.isolate.tester': 'Do not rely on a plug-in tester: it proves nothing about a buried cable.',
  'operation.isolate.water':
    'Turn the water off at the stop valve, and the hot at its own; open the lowest taps of both until they run dry. Heating pipes and a cylinder stay full: find out where their pipes run.',
  'operation.isolate.gas': 'Have the gas shut off; touch no gas fitting yourself.',
  'operation.isolate.gas-not-known':
    'Find out whether there is gas in the house. If there is, have it shut off; touch no gas fitting yourself.',
  'operation.isolate.supply':
    'Run the drill and the lamps on a temporary supply meanwhile: from a circuit that is not in these walls, through an RCD, or from batteries.',
  'operation.isolate.note': 'Leave a note at the board so that nobody switches it on again.',

  'operation.restore-supply.title': 'Turn the supply on again',
  'operation.restore-supply.last-hole': 'Turn nothing on before the last hole in these walls is drilled.',
  'operation.restore-supply.look':
    'Look over every wall that was drilled: no damaged cable, no open box, no wet patch.',
  'operation.restore-supply.electricity':
    'Have the circuits switched on again by whoever proved them dead, and the RCD tested. Then take the note off the board.',
  'operation.restore-supply.wired':
    'A circuit that still waits to be wired stays off until its electrician has done it: {appliances}.',
  'operation.restore-supply.water':
    'Open the stop valve a little first and look for leaks. A branch whose sink or machine is still missing stays shut.',
  'operation.restore-supply.gas': 'Gas, if there is any, is turned on by the gas engineer only.',

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
    'The deepest bit or tip goes {depth} in from the finished face: trace to that depth. The detector’s own sheet says how deep it finds a live cable; what lies deeper is not traced, and is for an electrician to decide.',
  'operation.trace.depth.unknown':
    'How deep the holes will go is not known yet. Settle that first, then trace to that depth.',
  'operation.trace.other-face':
    'Look at the other face of the wall too: its sockets and switches make bands on this one.',
  'operation.trace.fooled':
    'Mark what it finds. Foil, mesh, damp and steel can fool it: silence proves nothing.',
  'operation.trace.live-and-dead':
    'Trace once while the circuits are live, then have them proved dead before the drill comes out.',
}
