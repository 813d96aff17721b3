/** Words of the work: drilling, plates and rails. */
export const drillingWords = {
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
}
