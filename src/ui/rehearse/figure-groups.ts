import type { NamedFigure } from '../../core/plan/types'

/** As many figures of one kind as this are a list; fewer stand large on their own. */
const A_LIST = 3
/** Figures that stand over the words of a step. */
const LEADING = 2

/** Figures of one kind, as of every leg or every stud, apart from those there are one or two of. */
export function figureGroups(figures: readonly NamedFigure[]): {
  readonly large: readonly NamedFigure[]
  readonly listed: readonly NamedFigure[]
} {
  const isListed = (f: NamedFigure) => figures.filter((g) => kindOf(g) === kindOf(f)).length >= A_LIST
  return { large: figures.filter((f) => !isListed(f)), listed: figures.filter(isListed) }
}

/** `label.leg-turns.in` and `.out` are one kind. */
const kindOf = ({ label }: NamedFigure) => label.key.split('.').slice(0, 2).join('.')

/** The first of those that stand alone go before what is to be done, everything else after it. */
export function leadingFigures(figures: readonly NamedFigure[]): {
  readonly first: readonly NamedFigure[]
  readonly rest: readonly NamedFigure[]
} {
  const alone = figureGroups(figures.filter((f) => !f.label.key.startsWith('label.hole-'))).large
  const first = alone.slice(0, LEADING)
  return { first, rest: figures.filter((f) => !first.includes(f)) }
}
