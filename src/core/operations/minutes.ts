/**
 * How long the work takes: common practice, no source. Minutes for one experienced fitter, low, typical and high, and
 * the factor for a first-timer on the first few repeats. Steps that are one row of the trade's table but several
 * operations here share its time by the parts given where they are made.
 */
interface Row {
  readonly low: number
  readonly typical: number
  readonly high: number
  /** First-timer over experienced. */
  readonly factor: number
}

const row = (low: number, typical: number, high: number, factor: number): Row => ({
  low,
  typical,
  high,
  factor,
})

export const WORK = {
  /** A delivery of 12 to 15 units. */
  delivery: row(60, 90, 150, 1.3),
  isolate: row(20, 40, 90, 1),
  booking: row(20, 30, 60, 1.5),
  /** Hidden things, the whole room. */
  trace: row(45, 60, 120, 1.5),
  strikeLine: row(15, 20, 30, 2),
  /** Floor readings under one run. */
  readFloor: row(10, 15, 25, 1.5),
  /** Heights, the whole room. */
  markHeights: row(15, 20, 40, 2),
  markWidths: row(20, 30, 60, 2),
  findStuds: row(20, 30, 60, 1.5),
  /** One hole; reckoned, not in the trade's table. */
  markHole: row(1, 1.5, 3, 1.5),
  nogging: row(20, 30, 60, 2),
  assemble: row(12, 20, 35, 2),
  /** Holes in the back of one unit for pipes and outlets. */
  serviceCutOuts: row(10, 15, 30, 2),
  /** More for each drawer. */
  drawer: row(10, 10, 10, 2),
  legsOrHangers: row(5, 6, 10, 1.5),
  /** A tall from lying to restrained. */
  tall: row(30, 45, 75, 1.7),
  /** One metre of rail. */
  rail: row(10, 15, 25, 1.7),
  /** One pair of plates. */
  plates: row(6, 8, 12, 1.7),
  hang: row(10, 20, 35, 2),
  join: row(5, 8, 15, 1.5),
  cornerBase: row(25, 40, 60, 2),
  base: row(12, 20, 30, 2),
  fixToWall: row(5, 8, 12, 1.7),
  island: row(45, 75, 120, 2),
  panel: row(20, 30, 45, 2),
  prove: row(15, 20, 30, 1),
  straightCut: row(15, 20, 30, 2),
  joint: row(60, 75, 120, 2.5),
  cutOut: row(25, 35, 60, 2),
  layWorktop: row(30, 45, 75, 1.7),
  /** Stone is templated and laid by its own fitters. */
  stone: row(60, 120, 180, 1),
  /** A metre of upstand or splashback. */
  upstand: row(10, 15, 20, 2),
  sink: row(60, 90, 150, 2),
  appliance: row(20, 40, 75, 1.5),
  front: row(7, 11, 18, 2),
  /** A metre of cornice or pelmet. */
  cornice: row(15, 20, 30, 2),
  /** A metre of plinth. */
  plinth: row(8, 12, 20, 1.7),
  handOver: row(45, 60, 120, 1),
} as const satisfies Readonly<Record<string, Row>>

export interface Minutes {
  readonly low: number
  readonly typical: number
  readonly high: number
}

/** First-timer's minutes for a share or a multiple of one row; never less than one minute. */
export function minutesFor(work: Row, times = 1): Minutes {
  const at = (minutes: number) => Math.max(1, Math.round(minutes * work.factor * times))
  return { low: at(work.low), typical: at(work.typical), high: at(work.high) }
}

/** Minutes of work done one after the other. */
export function inTurn(...pieces: readonly Minutes[]): Minutes {
  const sum = (of: (m: Minutes) => number) => pieces.reduce((all, m) => all + of(m), 0)
  return { low: sum((m) => m.low), typical: sum((m) => m.typical), high: sum((m) => m.high) }
}
