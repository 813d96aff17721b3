/** Words of holes: what speaks against one, and what is to be done before any is drilled. */
export const holesWords = {
  'holes.place-unknown': 'Its place is not known yet.',
  'holes.region-not-chosen': 'The country has not been chosen, so its cable bands are not known.',
  'holes.wall-not-known': 'What the wall is made of is not known.',
  'holes.nothing-behind':
    'Nothing behind it to hold in: no stud, no timber let in. Board alone does not carry.',
  'holes.timber-not-sure':
    'By the readings it may miss the sound part of {about}. Measure {about} again before drilling.',
  'holes.in-accessory-vertical': 'Straight above or below {about}, where its cable is to be expected.',
  'holes.in-accessory-horizontal': 'Level with {about}, where its cable is to be expected.',
  'holes.in-corner': 'In the strip beside a corner, where cables may run hidden.',
  'holes.in-ceiling': 'In the strip under the ceiling, where cables may run hidden.',
  'holes.in-service': 'Over {about}, or too near it.',
  'holes.in-lintel': 'In {about}, or where it bears.',
  'holes.in-opening': 'In {about}.',
  'holes.off-the-wall': 'Past the end of its wall.',
  'holes.perhaps-in-opening': 'It may lie in {about}, of which an edge was not measured. Measure it.',
  'holes.over-opening': 'Over {about}, where something must carry the wall and nobody has said what.',
  'holes.near-band': 'Only {by} mm from the band of {about}: nearer than the readings can tell.',
  'holes.ceiling-not-read': 'The ceiling over it has not been read, and cables may run hidden just under it.',
  'holes.band-not-placed': 'Where the band of {about} lies is not known.',
  'holes.depth-unknown': 'How deep it goes is not known.',
  'holes.past-depth':
    'Goes {depth:pm} into the wall. Deeper than {limit} mm a cable may run anywhere: trace to that depth, and have the circuits proved dead.',
  'holes.past-setback':
    'Goes {depth:pm} from the face, more than {limit} mm into the stud, where cables run. Look for a steel plate, trace, and have the circuits proved dead.',
  'holes.other-face-unseen': 'Nobody has looked what is on the other face of the wall.',
  'holes.too-short': 'The screw entered for it is too short.',
  'holes.out-of-back': 'It comes out at the back of the wall, or nearly so.',
  'holes.none-entered': 'No screw or plug has been entered for it.',
  'holes.no-stand-off': 'No stand-off fixing has been entered for it.',
  'holes.base-not-known': 'What it would hold in is not known.',
  'holes.hold-not-known': 'How deep its screw must hold is not known, nor whether it is long enough.',
  'holes.band-unknown-accessory':
    'Where {about} is on {wall}, or how big, is not known. Until it is, every hole on {wall} waits.',
  'holes.band-unknown-ceiling':
    'The ceiling over {wall} has not been read. Cables may run hidden just under it: read it before the top holes.',
  'holes.band-unknown-corner': 'Where {wall} ends is not known, and cables may run hidden beside its corner.',
  'holes.band-unknown-service':
    'Where {about} runs in {wall} is not known. Until it is, every hole on {wall} waits.',
  'holes.band-unknown-lintel':
    'Where {about} lies in {wall} is not known. Until it is, every hole on {wall} waits.',
  'holes.read-the-ceiling': 'Read the ceiling up from the line, over the units that reach it.',
  'holes.measure-the-wall': 'Measure the wall from corner to corner.',
  'holes.measure-its-place':
    'Measure where {about} is, from a corner and from the line, on the face it is on, and how big it is.',
  'holes.trace-first':
    'Trace all of {wall} with a detector before the first hole in it. Bands show where cables should be, not where they are.',
  'holes.other-face-not-looked-at':
    'Look at the other face of {wall}: a socket there has its cable in the same wall. Enter what you find, measured on that face.',
  'holes.hole-past-50':
    'Stop before {holes} in {wall}: trace there to {deepest:pm}, and have the circuits proved dead by someone competent. Deeper than {limit} mm a cable may run anywhere.',
  'holes.hole-past-setback':
    'Stop before {holes} in {wall}: look for plates, trace to {deepest:pm} from the face, and have the circuits proved dead. The screws go more than {limit} mm into the stud, where cables run.',
  'holes.hole-near-band':
    'A hole {unit} needs, {along} from the left corner and {height:signed} from the line, is so near where a cable or pipe may run that the readings cannot tell. Do not drill it yet.',
  'holes.measure-hole-and-band':
    'Measure the hole and what is beside it again, from the same corner. If they are still this near, take it as not to be drilled.',
  'holes.hole-refused':
    'A hole {unit} needs, {along} from the left corner and {height:signed} from the line, may not be drilled there.',
  'holes.hole-refused-others-hold':
    'A hole of {unit}, {along} from the left corner and {height:signed} from the line, may not be drilled; others hold it.',
  'holes.hole-moved':
    'A hole of {unit} was wanted {along} from the left corner, {height:signed} from the line, and may not be drilled there: the next free place is used.',
} as const
