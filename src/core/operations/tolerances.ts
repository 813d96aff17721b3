import { type Figure, type FigureUnit, known } from '../figure'

/** What a college marking sheet would call good; past about twice that it is rejected. Common practice, no source. */
const why = 'common practice: what a college marking sheet calls good'

function tolerance(value: number, unit: FigureUnit = 'mm'): Figure {
  return known(value, 0, unit, [], { kind: 'common-practice', why })
}

export const TOLERANCE = {
  /** The line closing on its own start, and the laser turned round over 5 m. */
  lineCloses: tolerance(1),
  /** A mark against the laser. */
  mark: tolerance(1),
  baseTop: tolerance(1),
  /** Front edges over 2 m. */
  straight: tolerance(1),
  levelFrontToBack: tolerance(1),
  /** Left to right, along one level. */
  levelAcross: tolerance(1),
  tallPlumb: tolerance(1),
  undersideLine: tolerance(1),
  /** Over 720 mm. */
  wallUnitPlumb: tolerance(1),
  flush: tolerance(0.5),
  doorGap: tolerance(0.5),
  diagonals: tolerance(2),
  /** Over 3 m. */
  worktopLevel: tolerance(2),
  overhang: tolerance(1),
  scribeGap: tolerance(1),
  plinthGap: tolerance(2),
  /** An appliance's bay: wider by this much, never narrower. */
  bayWidth: tolerance(2),
  holePlace: tolerance(5),
  /** A floor drop read again. */
  floorReading: tolerance(1),
  legLength: tolerance(1),
  noggingFlush: tolerance(1),
} as const

/** A figure a marking sheet asks for. */
export const usual = (value: number, unit: FigureUnit = 'mm'): Figure => tolerance(value, unit)
