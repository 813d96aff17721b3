import type { Plan } from '../../core/plan/types'
import { footOf, inputName, unitName, unitOf } from '../../core/words/plan-names'
import type { KeptEntry } from '../../state/store'
import { words } from '../words'

/** The number in a typed quantity, as the file holds it: bare, or with its precision. */
function numberIn(value: unknown): string | null {
  if (typeof value === 'number') return `${value}`
  const inner = (value as { value?: unknown } | null)?.value
  return typeof inner === 'number' ? `${inner}` : typeof value === 'string' ? value : null
}

/** What was written down, in words. */
export function entryWords(entry: KeptEntry, plan: Plan): string {
  const id = String(entry['unit'] ?? '')
  const unit = unitName(id, plan)
  switch (entry.kind) {
    case 'done':
      return `Done: ${operationTitle(String(entry['operation']), plan)}`
    case 'set': {
      const up = numberIn(entry['up'])
      return `${entry['edge'] === 'top' ? 'Top' : 'Underside'} of ${unit} read at ${up === null ? `−${numberIn(entry['down'])}` : `+${up}`} from the line`
    }
    case 'floor-at-foot':
      return `Floor under the ${footOf(unitOf(id, plan), String(entry['foot']))} foot of ${unit}: ${numberIn(entry['drop'])} below the line`
    case 'level':
      return entry['low'] === 'neither'
        ? `Level on ${unit}: even`
        : `Level on ${unit}: ${entry['low']} end low, packer ${numberIn(entry['packer'])} under a level of ${numberIn(entry['levelLength'])}`
    case 'tried':
      return `Tried on ${unit}: one turn of the ${String(entry['part']).replaceAll('-', ' ')} moves ${numberIn(entry['perTurn'])} mm`
    case 'observed':
      return `Found: ${inputName(String(entry['fact']), plan)} is ${numberIn(entry['value']) ?? String(entry['value'])}`
    case 'correct':
      return `Entry ${String(entry['entry'])} does not hold`
    default:
      return entry.kind
  }
}

function operationTitle(id: string, plan: Plan): string {
  const operation = plan.operations.find((o) => o.id === id)
  return operation === undefined ? id : words(operation.title)
}

/** Ids of the entries that no longer hold, by the corrections that still do. */
export function withdrawn(entries: readonly KeptEntry[]): ReadonlySet<string> {
  const gone = new Set<string>()
  for (const entry of [...entries].reverse()) {
    if (entry.kind === 'correct' && !gone.has(entry.id)) gone.add(String(entry['entry']))
  }
  return gone
}

/** The entry by which an operation counts as done, if one still holds. */
export function doneEntry(entries: readonly KeptEntry[], operation: string): KeptEntry | undefined {
  const gone = withdrawn(entries)
  return entries.findLast((e) => e.kind === 'done' && e['operation'] === operation && !gone.has(e.id))
}

/** 2026-11-25T10:20:00Z → 10:20, by the clock of this device; empty when nobody wrote it down. */
export function clockText(at: string | undefined): string {
  const time = at === undefined ? Number.NaN : Date.parse(at)
  if (Number.isNaN(time)) return ''
  const date = new Date(time)
  return `${`${date.getHours()}`.padStart(2, '0')}:${`${date.getMinutes()}`.padStart(2, '0')}`
}
