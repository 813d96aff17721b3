import type { Figure } from '../../core/figure'
import type { Change, Operation, Plan } from '../../core/plan/types'
import { figureText } from '../../core/words/format'
import { footOf, unitName, unitOf, wallName } from '../../core/words/plan-names'
import { lineName } from '../paper/wall/line-names'
import { words } from '../words'

export interface TellingChange {
  readonly id: string
  readonly say: string
  /** The work it is about was done before, by the figure it had then. */
  readonly isDone: boolean
}

/**
 * The changes people act on, in words: "leg front left of base unit 2: was 142 mm, is 146 mm". Figures that only lead to
 * these, and those nobody sets a tool by, are left to the sheets.
 */
export function tellingChanges(plan: Plan): readonly TellingChange[] {
  return plan.changes.flatMap((change) => {
    const about = aboutWhat(change.what.split('/'), plan)
    if (about !== null) {
      const say = `${about.name}: ${wasIs(change, about.signed)}`
      return [{ id: change.what, say, isDone: !isAhead(plan, about.work) }]
    }
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
  /** Whether an operation works to this figure. */
  readonly work: (operation: Operation) => boolean
}

/** Whether anything is still to be done to that figure. */
function isAhead({ operations }: Plan, work: About['work']): boolean {
  return operations.some((o) => !o.done && work(o))
}

function aboutWhat([part, id = '', ...rest]: readonly string[], plan: Plan): About | null {
  const field = rest.join('/')
  if (part === 'units') return aboutUnit(id, rest, plan)
  if (part === 'lines' && field === 'height') return aboutLine(id, plan)
  if (part === 'rails' && field === 'edge') {
    return { name: `edge of rail ${id}`, signed: true, work: (o) => o.rails.includes(id) }
  }
  if (part === 'holes' && (field === 'along' || field === 'height')) return aboutHole(id, field, plan)
  return null
}

function aboutLine(id: string, plan: Plan): About | null {
  const line = plan.lines.find((l) => l.id === id)
  if (line === undefined) return null
  const name = `line “${lineName(line)}” on ${wallName(line.wall, plan)}`
  return { name, signed: true, work: (o) => o.lines.includes(id) }
}

function aboutHole(id: string, field: 'along' | 'height', plan: Plan): About {
  const hole = plan.holes.find((h) => h.id === id)
  const which =
    hole === undefined ? id : `${hole.number ?? 'not to be drilled'} on ${wallName(hole.wall, plan)}`
  const from = field === 'along' ? 'from the left corner' : 'from the line'
  return { name: `hole ${which}, ${from}`, signed: field === 'height', work: (o) => o.holes.includes(id) }
}

/** Kinds of work by which a unit comes to its height. */
const SETTING = new Set(['set-legs', 'stand-up', 'place', 'hang', 'level'])

function aboutUnit(id: string, rest: readonly string[], plan: Plan): About | null {
  const unit = unitName(id, plan)
  const work: About['work'] = (o) => o.on.includes(id) && SETTING.has(o.kind)
  const [list, item = '', field] = rest
  if (list === 'legs' && field === 'extension')
    return { name: `leg ${footOf(unitOf(id, plan), item)} of ${unit}`, signed: false, work }
  if (list === 'shims' && field === 'height')
    return { name: `shim under the ${footOf(unitOf(id, plan), item)} corner of ${unit}`, signed: false, work }
  if (rest.length > 1) return null
  if (list === 'underside') return { name: `underside of ${unit}`, signed: true, work }
  if (list === 'top') return { name: `top of ${unit}`, signed: true, work }
  if (list === 'left') return { name: `left side of ${unit}`, signed: false, work }
  return null
}

function operationChange(change: Change, plan: Plan): readonly TellingChange[] {
  if (change.was !== null || change.is !== null) return []
  const operation = plan.operations.find((o) => o.id === change.what)
  const say =
    operation === undefined ? `no longer needed: ${change.what}` : `new work: ${words(operation.title)}`
  return [{ id: change.what, say, isDone: false }]
}
