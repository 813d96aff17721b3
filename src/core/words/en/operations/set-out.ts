/** Words of the work: setting out. */
export const setOutWords = {
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
  'operation.set-out-heights.base-bracket': 'Bracket holes of the base units {height:signed} from the line.',
  'operation.set-out-heights.base-rail':
    'Screw holes of the base units, through their back rails, {height:signed} from the line.',
  'operation.set-out-heights.base-rail.unknown':
    'Screw holes of the base units, through their back rails: not known yet.',
  'operation.set-out-heights.base-bracket.unknown': 'Bracket holes of the base units: not known yet.',
  'operation.set-out-heights.tall-restraint':
    'Holes that hold the tall units back {height:signed} from the line.',
  'operation.set-out-heights.tall-restraint.unknown': 'Holes that hold the tall units back: not known yet.',

  'operation.set-out-widths.title': 'Mark the widths on {wall}',
  'operation.set-out-widths.storey-rod':
    'Take a straight batten as a storey rod. Mark on it both sides of every unit and space ({count}), as listed here.',
  'operation.set-out-widths.first':
    'Start with {unit}: {left} to {right} from the left corner, as you face the wall.',
  'operation.set-out-widths.first.unknown': 'Where {unit} stands is not known yet: measure its place first.',
  'operation.set-out-widths.plumb':
    'Measure along the line from the left corner. Mark the wall, then plumb each mark up and down to the floor.',
  'operation.set-out-widths.sum': 'Hold the rod to the wall again: every mark must meet its own.',
  'operation.set-out-widths.front-line':
    'Mark the front edge of the bases on the floor, {out} out from the wall at both ends, and stretch a string between. Where the wall bellies out, move both ends out by as much.',
  'operation.set-out-widths.front-line.unknown':
    'The front edge of the bases is not known yet: find out how deep they are.',

  'operation.find-studs.title': 'Find the studs in {wall}',
  'operation.find-studs.both-edges':
    'Find both edges of each stud, and mark the middle between them. One beep is not a stud. A magnet finds its screws.',
  'operation.find-studs.expected':
    'Compare with the studs of the survey ({count}), counted from the left corner.',
  'operation.find-studs.none-yet':
    'The survey has no stud here yet. Find them, and enter them before you go on.',
  'operation.find-studs.unsure': 'Not sure yet: the {studs}. Prove each before anything is screwed to it.',
  'operation.find-studs.usual-spacing':
    'Studs are usually 400 mm apart and 38 to 50 mm wide, but the spacing varies: prove it over three.',
  'operation.find-studs.no-drill': 'Do not drill to find a stud.',

  'operation.mark-holes.title': 'Mark the holes on {wall}',
  'operation.mark-holes.count':
    'Mark the holes on {wall} ({count}), each with its number from the wall drawing.',
  'operation.mark-holes.from': 'Measure along from the left corner, and up or down from the line.',
  'operation.mark-holes.refused':
    'No hole {along} from the left corner and {height:signed} from the line: cross that place off on the wall.',
  'operation.mark-holes.refused.unknown':
    'A further hole that was wanted may not be drilled, though its place is not all known yet ({along} from the left corner, {height:signed} from the line).',
  'operation.mark-holes.ask':
    'Something is still to be settled for {holes}: mark them, and do not drill them yet.',
  'operation.mark-holes.in-timber':
    'A mark may be 5 mm out, and must lie 12 mm or more inside both edges of the timber.',
  'operation.mark-holes.tolerance': 'A mark may be 5 mm out and no more.',

  'operation.fit-nogging.title.nogging': 'Fit a nogging in {wall}',
  'operation.fit-nogging.title.pattress': 'Fit a pattress on {wall}',
  'operation.fit-nogging.needed-for': 'The fixings of {unit} find too little timber here.',
  'operation.fit-nogging.there-already':
    'Look first whether timber is already there: where the wall is open, or by detector and magnet. If you see or feel it, enter it and leave the wall closed.',
  'operation.fit-nogging.cut':
    'Cut the board away only now that the wall has been traced and all is off: no deeper than the board, {board}, back to the middle of the studs at both ends.',
  'operation.fit-nogging.cut.unknown':
    'Cut the board away only now that the wall has been traced and all is off: no deeper than the board, back to the middle of the studs at both ends.',
  'operation.fit-nogging.place':
    'Let it in from {from} to {to} from the left corner, its middle {height:signed} from the line.',
  'operation.fit-nogging.place-behind':
    'It is wanted behind the unit, from {from} to {to} from the left corner, its middle {height:signed} from the line. Let it in from the last stud before that to the first stud after it, a piece in each gap.',
  'operation.fit-nogging.place-behind.unknown': 'Where it goes is not known yet: measure that first.',
  'operation.fit-nogging.place.unknown': 'Where it goes is not known yet: measure that first.',
  'operation.fit-nogging.section':
    'The piece is {high} high on the wall and {thick} thick, as the survey has it.',
  'operation.fit-nogging.section.unknown':
    'How high on the wall and how thick the piece is nobody has entered: measure both, and enter them before a screw goes into it.',
  'operation.fit-nogging.section-usual':
    'Take timber {high} high on the wall and {thick} thick: common practice, no source.',
  'operation.fit-nogging.section-least':
    'Less than {least} high it may not be: a screw must lie {edge} mm inside both its edges, wherever its mark may fall.',
  'operation.fit-nogging.section-reach': 'Its screws reach {reach} into it: take none thinner.',
  'operation.fit-nogging.section-reach.unknown':
    'How far its screws reach into it is not known yet: choose the screw first, and take no timber thinner than that.',
  'operation.fit-nogging.section-thin':
    'Its screws reach {reach}, and it is {thick} thick: their tips come out behind. Take thicker timber, or find out first what runs there.',
  'operation.fit-nogging.nogging':
    'Screw it to the studs at both ends, face flush with theirs: two {diameter:bare} × {length} wood screws at each end through {bit} pilots, at about 30° to the wall: no tip may come deeper than {tip} from the finished face.',
  'operation.fit-nogging.nogging.unknown':
    'Screw it to the studs at both ends, its face flush with theirs: two wood screws at each end, at a flat slant. How deep their tips come from the finished face is not known yet: measure the board first.',
  'operation.fit-nogging.pattress':
    'Screw the board to every stud it crosses: two {diameter:bare} × {length} wood screws in each, through {bit} pilots.',
  'operation.fit-nogging.record': 'Photograph it, and write its height on the wall, before it is covered.',
  'operation.fit-nogging.close': 'Close the board over it, flush, before any hole is marked on this wall.',
}
