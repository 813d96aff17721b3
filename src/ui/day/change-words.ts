import type { Figure } from '../../core/figure'
import type { Change, Plan } from '../../core/plan/types'
import { figureText } from '../../core/words/format'
import { footName, unitName, wallName } from '../names'
import { LINE_NAMES } from '../paper/wall/HeightLines'
import { words } from '../words'

export interface TellingChange {
  readonly id: string
  readonly say: string
}

/**
 * The changes people act on, in words: "leg front left of base unit 2: was 142 mm, is 146 mm". Figures that only lead to
 * these, and those nobody sets a tool by, are left to the sheets.
 */
export function tellingChanges(plan: Plan): readonly TellingChange[] {
  return plan.changes.flatMap((change) => {
    const about = aboutWhat(change.what.split('/'), plan)
    if (about !== null) return [{ id: change.what, say: `${about.name}: ${wasIs(change, about.signed)}` }]
    return operationChange(change, plan)
  })
}

function wasIs({ was, is }: Change, signed: boolean): string {
  const text = (figure: Figure | null) => (figure === null ? null : figureText(figure, { signed }))
  if (was === null) return `is ${text(is)}`
  if (is === null) return `was ${text(was)}, falls away`
  return `was ${text(was)}, is ${text(is)}`
}

interface About {
  readonly name: string
  readonly signed: boolean
}

function aboutWhat([part, id = '', ...rest]: readonly string[], plan: Plan): About | null {
  const field = rest.join('/')
  if (part === 'units') return aboutUnit(id, rest, plan)
  if (part === 'lines' && field === 'height') {
    const line = plan.lines.find((l) => l.id === id)
    return line === undefined
      ? null
      : { name: `line “${LINE_NAMES[line.of] ?? line.of}” on ${wallName(line.wall, plan)}`, signed: true }
  }
  if (part === 'rails' && field === 'edge') return { name: `edge of rail ${id}`, signed: true }
  if (part === 'holes' && (field === 'along' || field === 'height')) {
    const hole = plan.holes.find((h) => h.id === id)
    const name =
      hole === undefined
        ? `hole ${id}`
        : `hole ${hole.number ?? 'not to be drilled'} on ${wallName(hole.wall, plan)}`
    return {
      name: `${name}, ${field === 'along' ? 'from the left corner' : 'from the line'}`,
      signed: field === 'height',
    }
  }
  return null
}

function aboutUnit(id: string, rest: readonly string[], plan: Plan): About | null {
  const unit = unitName(id, plan)
  const [list, item = '', field] = rest
  if (list === 'legs' && field === 'extension')
    return { name: `leg ${footName(item)} of ${unit}`, signed: false }
  if (list === 'legs' && field === 'turns')
    return { name: `turns of leg ${footName(item)} of ${unit}`, signed: false }
  if (rest.length > 1) return null
  if (list === 'underside') return { name: `underside of ${unit}`, signed: true }
  if (list === 'top') return { name: `top of ${unit}`, signed: true }
  if (list === 'left') return { name: `left side of ${unit}`, signed: false }
  return null
}

function operationChange(change: Change, plan: Plan): readonly TellingChange[] {
  if (change.was !== null || change.is !== null) return []
  const operation = plan.operations.find((o) => o.id === change.what)
  const say =
    operation === undefined ? `no longer needed: ${change.what}` : `new work: ${words(operation.title)}`
  return [{ id: change.what, say }]
}
