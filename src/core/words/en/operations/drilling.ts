/** Words of the work: drilling, screws, plugs, brackets, plates and rails. */
export const drillingWords = {
  'operation.drill.one-hole': 'Drill one hole {along} from the left corner, {height:signed} from the line.',
  'operation.drill.one-hole.unknown': 'Drill one hole at its mark.',
  'operation.drill.level-holes': 'Drill {count} holes at their marks, all {height:signed} from the line.',
  'operation.drill.level-holes.unknown': 'Drill {count} holes at their marks.',
  'operation.drill.holes-at-marks': 'Drill {count} holes, each at its own mark.',
  'operation.drill.bit.wood-screw':
    'For {diameter:bare} × {length} wood screws: pilot {bit}, {depth} deep from the finished face of the wall.',
  'operation.drill.bit.wood-screw.unknown':
    'The screw, its bit or its depth is not known yet. Read the packet, enter it, and drill no deeper than it says.',
  'operation.drill.bit.bracket-screw':
    'For {diameter:bare} × {length} bracket screws: pilot {bit}, {depth} deep from the finished face of the wall.',
  'operation.drill.bit.bracket-screw.unknown':
    'The screw, its bit or its depth is not known yet. Read the packet, enter it, and drill no deeper than it says.',
  'operation.drill.bit.lag-screw':
    'For {diameter:bare} × {length} lag screws: pilot {bit}, {depth} deep from the finished face of the wall.',
  'operation.drill.bit.lag-screw.unknown':
    'The screw, its bit or its depth is not known yet. Read the packet, enter it, and drill no deeper than it says.',
  'operation.drill.bit.screw-and-plug':
    'For plugs with {diameter:bare} × {length} screws: bit {bit}, the size of the plug, {depth} deep from the finished face of the wall.',
  'operation.drill.bit.screw-and-plug.unknown':
    'The screw, its bit or its depth is not known yet. Read the packet, enter it, and drill no deeper than it says.',
  'operation.drill.bit.frame-plug':
    'For {diameter:bare} × {length} frame plugs: bit {bit}, the size of the plug, {depth} deep from the finished face of the wall.',
  'operation.drill.bit.frame-plug.unknown':
    'The screw, its bit or its depth is not known yet. Read the packet, enter it, and drill no deeper than it says.',
  'operation.drill.bit.anchor':
    'For {diameter:bare} × {length} anchors: bit {bit}, the size its maker says, {depth} deep from the finished face of the wall.',
  'operation.drill.bit.anchor.unknown':
    'The screw, its bit or its depth is not known yet. Read the packet, enter it, and drill no deeper than it says.',
  'operation.drill.bit.stand-off':
    'For {diameter:bare} × {length} stand-off fixings: bit {bit}, the size its maker says, {depth} deep from the finished face of the wall.',
  'operation.drill.bit.stand-off.unknown':
    'The screw, its bit or its depth is not known yet. Read the packet, enter it, and drill no deeper than it says.',
  'operation.drill.no-screw':
    'Which screw goes in here has not been entered. Settle that before you drill: it decides the bit and the depth.',
  'operation.drill.clear-hole': 'First a clear hole, {clear}, through the rail only.',
  'operation.drill.clear-hole.unknown':
    'First a clear hole through the rail only, a little wider than the screw: its size is not known yet.',
  'operation.drill.through.pilot':
    'Then the pilot through it, {bit}. Depth stop {stop} from the face of the rail: {before} of rail and packing, {depth} of wall. Where they measure less, the stop goes back as much.',
  'operation.drill.through.pilot.unknown':
    'Then the pilot through it. How deep is not known yet: settle that before you drill.',
  'operation.drill.through.plug':
    'Drill rail and wall in one, bit {bit}, the size of the plug. Depth stop {stop} from the face of the rail: {before} of rail and packing, {depth} of wall. Where they measure less, the stop goes back as much.',
  'operation.drill.through.plug.unknown':
    'Drill rail and wall in one with the bit of the plug. How deep is not known yet: settle that before you drill.',
  'operation.drill.inside.bottom':
    'Hole {hole}: inside the unit, {across} from the inner face of its left side and {upright} up from the upper face of its bottom panel.',
  'operation.drill.inside.bottom.unknown':
    'Where hole {hole} comes inside the unit is not known yet: carry its mark over before the unit hides it.',
  'operation.drill.inside.top':
    'Hole {hole}: inside the unit, {across} from the inner face of its left side and {upright} down from the upper edge of that side.',
  'operation.drill.inside.top.unknown':
    'Where hole {hole} comes inside the unit is not known yet: carry its mark over before the unit hides it.',
  'operation.drill.outside.bottom':
    'Hole {hole}: {across} from the outside of its left side and {upright} up from its underside.',
  'operation.drill.outside.bottom.unknown':
    'Where hole {hole} comes behind the unit is not known yet: carry its mark over before the unit hides it.',
  'operation.drill.outside.top':
    'Hole {hole}: {across} from the outside of its left side and {upright} down from the upper edge of that side.',
  'operation.drill.outside.top.unknown':
    'Where hole {hole} comes behind the unit is not known yet: carry its mark over before the unit hides it.',
  'operation.drill.detector':
    'With the circuits off a detector finds no live cable: go by the marks made while they were live, and where a hole is not in what was traced, stop. Then go over each mark once more with the detector, and drill.',
  'operation.drill.detector-before':
    'These marks were gone over with the detector before {unit} hid them. If not, stop: do that first.',
  'operation.drill.hides-one':
    'Before {unit} goes to its place, go over its mark on the wall once more with the detector: it will hide it.',
  'operation.drill.hides-marks':
    'Before {unit} goes to its place, go over its marks on the wall ({count}) once more with the detector: it will hide them.',
  'operation.drill.stud-as-found':
    'A hole goes into the middle of its stud as you found it today. Where that is not at the mark, the hole moves with it: enter it first.',
  'operation.drill.ask-first': 'Something is still to be settled for {holes}: settle it before you drill.',

  'operation.drill-plates.title': 'Drill for the plates of {unit}',
  'operation.drill-plates.title.cleat': 'Drill for the cleat of {unit}',
  'operation.drill-plates.no-hole': 'There is no hole here yet that may be drilled. Stop, and see why.',
  'operation.drill-plates.two-plates': 'They are for two plates, one behind each top corner.',
  'operation.drill.no-deeper': 'Set the depth stop: no deeper than needed. Let the dust fall into a vacuum.',

  'operation.fix-plates.title': 'Fix the plates of {unit}',
  'operation.fix-plates.title.cleat': 'Fix the cleat of {unit}',
  'operation.fix-plates.screw': 'Screw both plates hand-tight, level them to each other, then tighten.',
  'operation.fix-plates.screw.cleat': 'Screw the cleat hand-tight, level it, then tighten.',
  'operation.fix-plates.edge':
    'Their hook-on edge lies {below} below the unit’s top, which comes {top:signed} from the line.',
  'operation.fix-plates.edge.unknown':
    'Their hook-on edge goes to its line. How far below the unit’s top is not known yet.',
  'operation.fix-plates.where-the-level-lies': 'Lay the level across both hook-on edges.',
  'operation.fix-plates.where-the-level-lies.cleat': 'Lay the level along its top edge.',

  'operation.drill-rail.title': 'Drill for the rail on {wall}',
  'operation.drill-rail.title.of-one': 'Drill for the rail of {first}',
  'operation.drill-rail.title.of-several': 'Drill for the rail from {first} to {last}',
  'operation.drill-rail.no-hole': 'There is no hole here yet that may be drilled. Stop, and see why.',

  'operation.fix-rail.title': 'Fix the rail on {wall}',
  'operation.fix-rail.title.of-one': 'Fix the rail of {first}',
  'operation.fix-rail.title.of-several': 'Fix the rail from {first} to {last}',
  'operation.fix-rail.ends':
    'Cut the rail on the floor, not on the steps, and file its ends. It runs from {from} to {to} from the left corner of {wall}.',
  'operation.fix-rail.ends.unknown': 'How long the rail is on {wall} is not known yet.',
  'operation.fix-rail.edge': 'Its hook-on edge goes {edge:signed} from the line.',
  'operation.fix-rail.edge.unknown': 'How high its hook-on edge goes is not known yet.',
  'operation.fix-rail.one-end': 'Screw one end, lay the level along the edge, then screw the rest.',
  'operation.fix-rail.carries': 'It carries {units}.',

  'operation.screw.wood-screw': 'Screw: {diameter:bare} × {length} wood screws, one in each hole ({count}).',
  'operation.screw.wood-screw.unknown':
    'The size of the screws ({count}) is not known yet. Read the packet and enter it first.',
  'operation.screw.bracket-screw':
    'Screw: {diameter:bare} × {length} bracket screws, one in each hole ({count}).',
  'operation.screw.bracket-screw.unknown':
    'The size of the screws ({count}) is not known yet. Read the packet and enter it first.',
  'operation.screw.lag-screw': 'Screw: {diameter:bare} × {length} lag screws, one in each hole ({count}).',
  'operation.screw.lag-screw.unknown':
    'The size of the screws ({count}) is not known yet. Read the packet and enter it first.',
  'operation.screw.screw-and-plug':
    'Screw: {diameter:bare} × {length} screws in their plugs, one in each hole ({count}).',
  'operation.screw.screw-and-plug.unknown':
    'The size of the screws ({count}) is not known yet. Read the packet and enter it first.',
  'operation.screw.frame-plug': 'Screw: {diameter:bare} × {length} frame plugs, one in each hole ({count}).',
  'operation.screw.frame-plug.unknown':
    'The size of the screws ({count}) is not known yet. Read the packet and enter it first.',
  'operation.screw.anchor': 'Screw: {diameter:bare} × {length} anchors, one in each hole ({count}).',
  'operation.screw.anchor.unknown':
    'The size of the screws ({count}) is not known yet. Read the packet and enter it first.',
  'operation.screw.stand-off':
    'Screw: {diameter:bare} × {length} stand-off fixings, one in each hole ({count}).',
  'operation.screw.stand-off.unknown':
    'The size of the screws ({count}) is not known yet. Read the packet and enter it first.',
  'operation.screw.not-entered':
    'Which screw holds here has not been entered. Do not guess: settle it first.',

  'operation.plug.dust': 'Draw the dust out of every hole with a vacuum and a brush; do not blow it out.',
  'operation.plug.flush': 'Tap each plug in flush: none may stand proud, and none may turn.',
  'operation.plug.in-the-solid':
    'Tap each plug in until it is flush with the {base}, {front} behind the finished face. In plaster alone it holds nothing.',
  'operation.plug.in-the-solid.unknown':
    'Tap each plug in until it is flush with the {base} behind the plaster or tiles. In plaster alone it holds nothing.',
  'operation.plug.stand-off':
    'Set each fixing in the solid behind the gap, as its maker says: it must not press the board in.',

  'operation.bracket.each-side':
    'Fix an L bracket at each side: one leg to the wall, one to the side panel with 15 mm screws.',
  'operation.bracket.one-side':
    'Fix the one L bracket at that side: one leg to the wall, one to the side panel with 15 mm screws.',
  'operation.bracket.one-off-side':
    'Hole {holes} is not at a side, for a bracket goes where it can hold: put it on the rail at the back of the unit with 15 mm screws, never on the thin back itself.',
  'operation.bracket.off-side':
    'Holes {holes} are not at the sides, for brackets go where they can hold: put them on the rail at the back of the unit with 15 mm screws, never on the thin back itself.',
  'operation.bracket.others-at-side': 'The others go on the side panel they are next to.',

  'label.hole-in': 'hole {hole}, from the inside of the left side of {unit}',
  'label.hole-in-outside': 'hole {hole}, from the left side of {unit}',
  'label.hole-up': 'hole {hole}, up from the bottom panel of {unit}, inside',
  'label.hole-up-outside': 'hole {hole}, up from the underside of {unit}',
  'label.hole-down': 'hole {hole}, down from the top of {unit}',
  'label.hole-stop': 'hole {hole}, depth stop from the face of the rail of {unit}',
}
