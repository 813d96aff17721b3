/** A kitchen file in which nothing has been measured yet: everything is still to be found out. */
export const emptySurvey = {
  format: 'dryrun-kitchen',
  version: 1,
  name: 'My kitchen',
} as const

export interface GuideLine {
  readonly title: string
  readonly how: string
}

/** What to measure first in a room nobody has measured, in the order that gives a first answer soonest. */
export const FIRST_MEASURES: readonly GuideLine[] = [
  {
    title: 'The country, and the year the house was built',
    how: 'They say which rules hold for cables and lifting, and whether asbestos has to be looked for before anything is drilled.',
  },
  {
    title: 'One level line round the room',
    how: 'Strike it at about 1 m with a level or a laser and bring it back to where it began; note by how much it misses. All heights are read up or down from it.',
  },
  {
    title: 'The floor below the line',
    how: 'At every corner, and along each run at the wall and 600 mm out, about every 600 mm. The highest place decides how far every leg winds out.',
  },
  {
    title: 'The ceiling above the line',
    how: 'Over every tall unit, and over the floor where it will be stood up: it needs more height than its own on the way.',
  },
  {
    title: 'Each wall from corner to corner',
    how: 'At the floor, at worktop height and at wall-unit height. The smallest is what the units have.',
  },
  {
    title: 'Each corner',
    how: 'Mark 900 mm along one wall and 1200 mm along the other and measure across: 1500 is square.',
  },
  {
    title: 'What each wall is made of',
    how: 'Knock, look at a socket with the power off, look at the edge of a door. Do not drill to find out before it has been traced.',
  },
  {
    title: 'Sockets, switches, taps and pipes on both faces',
    how: 'From the left corner and from the line. Cables are to be expected above, below and beside each, and pipes go to what they feed.',
  },
  {
    title: 'Doors and windows',
    how: 'Their edges, which way they open and how far, and the narrowest place on the way in from the street.',
  },
  {
    title: 'What was delivered',
    how: 'Width, height, depth, mass and the range of the legs of every unit, from its own sheet. The sheet goes before every default.',
  },
]
