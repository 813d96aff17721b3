import type { NamedFigure } from '../../core/plan/types'

export interface HoleRow {
  /** Its number on the wall drawing. */
  readonly hole: string
  readonly along?: NamedFigure
  readonly height?: NamedFigure
  readonly depth?: NamedFigure
}

const COLUMNS: Readonly<Record<string, 'along' | 'height' | 'depth'>> = {
  'label.hole-along': 'along',
  'label.hole-height': 'height',
  'label.hole-depth': 'depth',
}

/** The figures about holes as rows, one a hole in the order they come, and whatever is about something else. */
export function holeRows(figures: readonly NamedFigure[]): {
  readonly rows: readonly HoleRow[]
  readonly others: readonly NamedFigure[]
} {
  const rows = new Map<string, HoleRow>()
  const others: NamedFigure[] = []
  for (const named of figures) {
    const column = COLUMNS[named.label.key]
    if (column === undefined) {
      others.push(named)
      continue
    }
    const hole = String(named.label.values['hole'] ?? '')
    rows.set(hole, { ...(rows.get(hole) ?? { hole }), [column]: named })
  }
  return { rows: [...rows.values()], others }
}
