/** Words of the work: panels, the hold point and worktops. */
export const worktopsWords = {
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
}
