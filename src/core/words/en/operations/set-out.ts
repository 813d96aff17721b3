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
}
