/** Words of the work: panels, the hold point and worktops. */
export const worktopsWords = {
  'operation.panel.title.end-panel': 'Fit {part}',
  'operation.panel.title.filler': 'Fit {part}',
  'operation.panel.title.scribe': 'Fit {part}',
  'operation.panel.at': 'It belongs to {units}.',
  'operation.panel.width': 'It takes {width} along the wall.',
  'operation.panel.width.unknown': 'Measure how much it takes along the wall.',
  'operation.panel.scribe': 'Hold it plumb, scribe it to wall and floor, and plane to the scribed mark.',
  'operation.panel.fix': 'Clamp it, then screw from inside the unit.',
  'operation.panel.stands-free':
    'No unit stands beside it to screw it to. How it is held, at wall, floor and worktop, its maker says: it must stand fast by itself before a worktop rests on it.',

  'operation.prove.title': 'Stop and prove the room',
  'operation.prove.secured': 'Check that every unit ({count}) is secured, and joined to its neighbour.',
  'operation.prove.tops': 'Hold the laser to the tops of the bases: {top:signed} from the line, within 1 mm.',
  'operation.prove.tops.unknown': 'Hold the laser to the tops of the bases: all one height, within 1 mm.',
  'operation.prove.bays':
    'Measure {bays} at front and back: never narrower than its figure, at most 2 mm wider.',
  'operation.prove.outlet-in-bay':
    'The {what} lies inside the {bay}: nobody can reach its plug once the appliance stands there. The usual place is in the unit next to it. Settle that with a competent electrician now.',
  'operation.prove.outlet-beside':
    'The appliance in the {bay} plugs in inside {unit}, where the {what} is. See that its lead and plug pass through.',
  'operation.prove.hold':
    'Go on only when every check is answered: nothing can be put right under a worktop.',

  'operation.worktop.title': 'Fit {worktop}',
  'operation.worktop.cut': 'Cut it to lie over {units}, the joints away from appliance bays.',
  'operation.worktop.stone':
    'The stone fitters template and lay it over {units}. Move no base after they have measured.',
  'operation.worktop.cutouts':
    'Make the cut-outs ({count}) on trestles, measured from the unit below, and seal the raw edges. Clamp a batten across each before the top is moved: it breaks there.',
  'operation.worktop.joints':
    'Make the joints ({count}) by the corner’s measured angle: half of it on both tops where they meet at a slant, the whole of it where one runs on behind the other. Try it on offcuts first.',
  'operation.worktop.lift.two': 'Two of you carry it, {mass}, on edge, and lay it on the bases.',
  'operation.worktop.lift.two.unknown':
    'Two of you carry it on edge, and lay it on the bases. Weigh it first: nobody knows its mass yet.',
  'operation.worktop.lift.three': 'Three of you carry it, {mass}, on edge, and lay it on the bases.',
  'operation.worktop.lift.three.unknown':
    'Three of you carry it on edge, and lay it on the bases. Weigh it first: nobody knows its mass yet.',
  'operation.worktop.lift.end-by-end':
    'It weighs {mass}: too much for this crew to carry whole, by the published filter. Rest one end on the bases, then lift the other end, {end}, and slide it on.',
  'operation.worktop.lift.end-by-end.unknown':
    'Rest one end on the bases, then lift the other end and slide it on. Weigh it first: nobody knows its mass yet.',
  'operation.worktop.lift.stop':
    'It weighs {mass}, and one end of it {end}: too much for this crew by the published filter. Stop. Get more people, or have it cut at a joint.',
  'operation.worktop.lift.stop.unknown':
    'What it weighs is not known, so no lift has been found for it. Weigh it first.',
  'operation.worktop.lift.fitters': 'It weighs {mass}: the stone fitters lift it, with their own aids.',
  'operation.worktop.lift.fitters.unknown': 'The stone fitters lift it, with their own aids.',
  'operation.worktop.lift.not-known':
    'It weighs {mass}. Nobody has said who lifts it: two at least, on edge.',
  'operation.worktop.lift.not-known.unknown':
    'Weigh it before you lift it: nobody knows its mass yet. Lift one end and double what the scales say. Two of you at least carry it, on edge.',
  'operation.worktop.height': 'Its top comes {height:signed} from the line; it is {thickness} thick.',
  'operation.worktop.height.unknown': 'Check the height of its top against its line.',
  'label.worktop-piece': 'mass of its heaviest piece between joints',
  'label.worktop-end': 'one end of it',
}
