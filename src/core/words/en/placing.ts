/** Words of the placing: standing up, ways in, what is in the way. */
export const placingWords: Readonly<Record<string, string>> = {
  'placing.stand-up.yes':
    'Tilted up over its {over} it needs {needed} of height; there is {ceiling}. It can be stood up.',
  'placing.stand-up.no':
    'Tilted up over its {over}, the side that needs least, it needs {needed} of height; there is only {ceiling}. It cannot be stood up here. Build it upright in its place, or bring it in upright.',
  'placing.stand-up.not-known':
    'Tilted up over its {over} it needs {needed} of height; there is {ceiling}. Measure the ceiling over the floor where you mean to stand it up before you lift.',
  'placing.legs.off':
    'Take its legs off first: wound in to {shortest} they are longer than the blocks of {blocks}, and it would turn on its legs instead of its edge.',
  'placing.no-room-in-place': '{unit} does not fit where it is to stand: it goes {by} mm into {thing}.',
  'placing.outside-room': '{unit} would stand outside the room, beyond {thing}.',
  'placing.trapped':
    '{unit} cannot be brought to its place. In the way from the front: {front}; from the left: {left}; from the right: {right}.',
  'placing.trapped-island':
    '{unit} cannot be brought to its place. In the way from the front: {front}; from the left: {left}; from the right: {right}; from behind: {back}.',
  'placing.not-stood-up':
    'There is nowhere in this room to stand {unit} up. In the way over its back: {back}; over its front: {front}; over its left: {left}; over its right: {right}. Build it upright in its place, or bring it in upright.',
  'placing.walls.known-walls':
    'The walls do not close round the room. The ways in were looked at only against the walls whose place is known.',
  'placing.walls.own-wall-only':
    'The walls have no place in the room yet. The ways in were looked at only against the wall at the back of each unit.',
}
