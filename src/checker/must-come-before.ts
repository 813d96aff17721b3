import type { Operation } from '../core/plan/types'
import type { Case } from './case'
import { holeTimber, isTimberFor, jointOf } from './expected-operations'
import type { GivenFinishing, GivenUnit } from './given'
import { groupOf, isCarcass, isHung } from './positions'
import { pathBlockers, tiltBlockers } from './replay'

/**
 * One operation that must come before another, worked out from the kitchen and from what the operations do. Kept by the
 * order always; `told` ones must also stand among the plan's hard reasons, or follow from them.
 */
export interface Must {
  readonly before: string
  readonly after: string
  readonly rule: string
  readonly told: boolean
}

/** Work that makes holes in a wall. */
export function drills(op: Operation): boolean {
  return op.holes.length > 0 && op.kind !== 'mark-holes'
}

export function obligations(c: Case): readonly Must[] {
  const there = (must: Must): boolean =>
    c.place.has(must.before) && c.place.has(must.after) && must.before !== must.after
  return [
    ...beforeHoles(c),
    ...supply(c),
    ...settingOut(c),
    ...c.given.units.filter(isCarcass).flatMap((unit) => ofUnit(c, unit)),
    ...joints(c),
    ...afterSecuring(c),
    ...holdPoint(c),
    ...carryingPanels(c),
    ...geometry(c),
    ...wishes(c),
    ...snagLast(c),
  ].filter(there)
}

function must(rule: string, before: string, after: string, told = true): Must {
  return { before, after, rule, told }
}

/** Nothing is drilled before services are off, traces made, heights and studs known, holes marked and asbestos looked for. */
function beforeHoles(c: Case): readonly Must[] {
  return c.plan.operations.filter(drills).flatMap((op) => {
    const holes = c.plan.holes.filter((h) => op.holes.includes(h.id))
    const walls = [...new Set(holes.map((h) => h.wall))]
    const timbers = holes.flatMap((h) => holeTimber(h.id) ?? [])
    return [
      must('isolate before hole', 'isolate:room', op.id),
      must('asbestos before hole', 'asbestos-check:room', op.id),
      ...walls.flatMap((wall) => [
        must('trace before hole', `trace:${wall}`, op.id),
        must('heights before holes', `set-out-heights:${wall}`, op.id),
        must('marks before holes', `mark-holes:${wall}`, op.id),
        must('studs before holes', `find-studs:${wall}`, op.id),
        ...timbers.map((timber) => must('timber before hole', `fit-nogging:${wall}.${timber}`, op.id)),
      ]),
    ]
  })
}

/** Nothing is live again while a wall is still to be drilled or opened; what runs on electricity is tried after that. */
function supply(c: Case): readonly Must[] {
  const back = 'restore-supply:room'
  const atWalls = c.plan.operations.filter(
    (op) => drills(op) || op.kind === 'fit-nogging' || DRILLS_ONCE_SETTLED.includes(op.kind),
  )
  const electric = c.given.appliances.filter(
    (a) => a.kind !== 'sink' && a.kind !== 'hood' && a.fuel !== 'gas' && a.fuel !== 'none',
  )
  // Drilled for and wired while all is off, and tried afterwards.
  const hoods = c.given.appliances.filter((a) => a.kind === 'hood')
  return [
    must('off before on again', 'isolate:room', back),
    ...atWalls.map((op) => must('supply after the last hole', op.id, back)),
    ...hoods.map((a) => must('supply after the last hole', `connect:${a.id}`, back)),
    ...electric.map((a) => must('supply before connecting', back, `connect:${a.id}`)),
  ]
}

/** Work that drills a wall or floor even where its holes have no place yet. */
const DRILLS_ONCE_SETTLED: readonly string[] = ['drill-plates', 'drill-rail', 'second-fix', 'restrain', 'fix']

/** Timber that is not in the file but put in for one unit (`nogging-<unit>…`) is there before that unit is fixed back. */
function neededTimber(c: Case, unit: GivenUnit): readonly Must[] {
  const added = c.plan.operations.filter((op) => isTimberFor(op.id, unit.id))
  return added.flatMap((op) =>
    ['second-fix', 'restrain', 'fix'].map((kind) => must('timber before hole', op.id, `${kind}:${unit.id}`)),
  )
}

/** The line before every mark; the floor before the heights; heights and widths before the marks of the holes. */
function settingOut(c: Case): readonly Must[] {
  // Once heights were read on the day, struck, or levelled to, they no longer rest on the floor.
  const holds = /^(set-out-heights|level|lock|fix|second-fix|screw-back|restrain):/
  const rests =
    c.achieved.edges.size === 0 &&
    !c.plan.operations.some((op) => op.done && holds.test(op.id)) &&
    c.given.readings.length > 0 &&
    !c.given.units.every(isHung) &&
    c.plan.heights.values.some((v) => v.height.state !== 'unknown')
  return c.given.walls.flatMap((wall) => [
    must('line before marks', 'strike:line', `set-out-heights:${wall.id}`),
    must('line before marks', 'strike:line', `set-out-widths:${wall.id}`, false),
    must('line before marks', 'strike:line', `mark-holes:${wall.id}`),
    must('floor before heights', 'strike:line', 'read-floor:room', false),
    must('floor before heights', 'read-floor:room', `set-out-heights:${wall.id}`, rests),
    must('heights before marks', `set-out-heights:${wall.id}`, `mark-holes:${wall.id}`),
    must('widths before marks', `set-out-widths:${wall.id}`, `mark-holes:${wall.id}`),
    ...c.plan.operations
      .filter((op) => op.id.startsWith(`fit-nogging:${wall.id}.`))
      .flatMap((op) => [
        must('isolate before the wall is opened', 'isolate:room', op.id, false),
        must('trace before the wall is opened', `trace:${wall.id}`, op.id, false),
        must('studs before timber between them', `find-studs:${wall.id}`, op.id, false),
        must('timber in before holes are marked', op.id, `mark-holes:${wall.id}`),
      ]),
  ])
}

function chain(rule: string, ids: readonly string[]): readonly Must[] {
  return ids.slice(1).map((after, i) => must(rule, ids[i] ?? '', after))
}

/** A unit's own way: delivered, assembled, its legs or hangers on, put up, levelled, locked, secured. */
function ofUnit(c: Case, unit: GivenUnit): readonly Must[] {
  const op = (kind: string): string => `${kind}:${unit.id}`
  const up = isHung(unit) ? op('hang') : groupOf(unit) === 'tall' ? op('stand-up') : op('place')
  return [
    must('delivery before assembly', 'check-delivery:room', op('assemble')),
    ...[up, op('set-legs'), op('fit-hangers')].map((after) =>
      must('delivery before assembly', 'check-delivery:room', after, false),
    ),
    must('assembled before placed', op('assemble'), up),
    must('assembled before legs', op('assemble'), op('set-legs'), false),
    must('floor before legs', 'read-floor:room', op('set-legs'), false),
    must('assembled before hangers', op('assemble'), op('fit-hangers'), false),
    must('legs before placed', op('set-legs'), groupOf(unit) === 'tall' ? op('place') : up),
    must('hangers before hung', op('fit-hangers'), op('hang')),
    must('heights before placed', `set-out-heights:${unit.wall}`, up, false),
    must('widths before placed', `set-out-widths:${unit.wall}`, up, false),
    // No wall carries the marks of an island: its top is levelled to the line itself.
    ...(unit.kind === 'island' ? [must('line before marks', 'strike:line', op('level'))] : []),
    ...(isHung(unit) ? ofHung(c, unit) : []),
    ...neededTimber(c, unit),
    ...chain('standing before levelled, levelled before fixed', [op('place'), op('level'), op('fix')]),
    ...chain('a tall is held until it is restrained', ['stand-up', 'place', 'level', 'restrain'].map(op)),
  ]
}

function ofHung(c: Case, unit: GivenUnit): readonly Must[] {
  const op = (kind: string): string => `${kind}:${unit.id}`
  const rails = c.given.rails.filter((rail) => rail.units.includes(unit.id))
  const last = ['second-fix', 'screw-back'].map(op).filter((id) => c.place.has(id))
  return [
    must('drill before fix', op('drill-plates'), op('fix-plates')),
    must('plates before hung', op('fix-plates'), op('hang')),
    ...rails.flatMap((rail) => [
      must('drill before fix', `drill-rail:${rail.id}`, `fix-rail:${rail.id}`),
      must('rail before hung', `fix-rail:${rail.id}`, op('hang')),
    ]),
    ...chain('hung, levelled, locked, secured', [op('hang'), op('level'), op('lock')]),
    ...last.map((id) => must('locked before secured', op('lock'), id)),
    ...last.map((id) => must('levelled before secured', op('level'), id)),
  ]
}

function joints(c: Case): readonly Must[] {
  return c.plan.operations.flatMap((op) =>
    (jointOf(op) ?? []).map((unit) => must('levelled before joined', `level:${unit}`, op.id, false)),
  )
}

/** The operation that makes a unit secured. */
export function securing(c: Case, unit: string): string | null {
  const op = c.plan.operations.find((o) => o.changes.some((ch) => ch.unit === unit && ch.to === 'secured'))
  return op?.id ?? null
}

function afterSecuring(c: Case): readonly Must[] {
  const secured = (unit: string, after: string, rule: string, told = true): readonly Must[] => {
    const by = securing(c, unit)
    return by === null ? [] : [must(rule, by, after, told)]
  }
  const fronts = c.given.units.flatMap((u) => secured(u.id, `hang-fronts:${u.id}`, 'secured before fronts'))
  const loads = c.given.appliances.flatMap((a) => {
    const connect = `connect:${a.id}`
    const bays = c.given.units.filter((u) => u.applianceBay === a.id).map((u) => u.id)
    const inOrOn = [...(a.over === null ? [] : [a.over]), ...bays]
    const tops = c.given.worktops.filter((w) => inOrOn.some((id) => id === w.id || w.over.includes(id)))
    return [
      ...inOrOn.flatMap((unit) => secured(unit, connect, 'secured before loaded')),
      ...tops.map((w) => must('worktop before appliance', `worktop:${w.id}`, connect, w.id === a.over)),
    ]
  })
  const panels = c.given.finishing.flatMap((f) =>
    ['panel', 'plinth', 'finish'].flatMap((kind) =>
      f.of.flatMap((unit) =>
        isScribed(c, f)
          ? secured(unit, `${kind}:${f.id}`, 'secured before parts', false)
          : [must('assembled before its filler', `assemble:${unit}`, `${kind}:${f.id}`, false)],
      ),
    ),
  )
  const tops = c.given.worktops.flatMap((w) =>
    w.over.flatMap((unit) => secured(unit, `worktop:${w.id}`, 'secured before worktop')),
  )
  return [...fronts, ...loads, ...panels, ...tops]
}

/**
 * All parts but one kind are fitted to units that stand fast. A filler in a corner or between two units sets the place of
 * the next unit and goes in with it; one that closes the end of a wall is scribed.
 */
function isScribed(c: Case, part: GivenFinishing): boolean {
  if (part.kind !== 'filler') return true
  const place = c.parts.get(part.id)
  const length = c.room.frames.get(part.wall ?? '')?.wall.length.value ?? null
  if (place === undefined) return false
  const { left, right } = place
  return (
    (left.value !== null && left.value <= 1) ||
    (right.value !== null && length !== null && right.value >= length - 1)
  )
}

/** Work stops when every base is secured, and no worktop goes on before the room is proved. */
function holdPoint(c: Case): readonly Must[] {
  const bases = c.given.units.filter((unit) => groupOf(unit) === 'base')
  return [
    ...bases.flatMap((unit) => {
      const by = securing(c, unit.id)
      return by === null ? [] : [must('all secured before hold point', by, 'prove:room')]
    }),
    ...c.given.worktops.map((w) => must('hold point before worktop', 'prove:room', `worktop:${w.id}`)),
  ]
}

/** Where a worktop ends over an appliance, the panel beside it is all that holds it up there. */
function carryingPanels(c: Case): readonly Must[] {
  const isSpace = (id: string) => c.given.units.some((u) => u.id === id && u.kind === 'appliance-space')
  const panels = c.given.finishing.filter(
    (f) => f.kind === 'end-panel' && f.of.length > 0 && f.of.every(isSpace),
  )
  return panels.flatMap((f) =>
    c.given.worktops
      .filter((w) => w.over.some((id) => f.of.includes(id)))
      .map((w) => must('panel before the worktop it carries', `panel:${f.id}`, `worktop:${w.id}`)),
  )
}

/** A unit that would stand in the way of another goes in after it, and off the floor another is stood up over. */
function geometry(c: Case): readonly Must[] {
  return c.plan.paths.flatMap((path) => {
    const unit = c.units.get(path.unit)?.unit
    if (unit === undefined) return []
    const own = isHung(unit) ? `hang:${unit.id}` : `place:${unit.id}`
    const goesIn = (id: string): string => {
      const other = c.units.get(id)?.unit
      if (other === undefined) return ''
      if (isHung(other)) return `hang:${id}`
      return `place:${id}`
    }
    return [
      ...pathBlockers(c, path).map((id) => must('path free', own, goesIn(id))),
      ...tiltBlockers(c, path).map((id) => must('floor free to stand up', `stand-up:${unit.id}`, goesIn(id))),
    ]
  })
}

/** What the user has asked for and will not do without. */
function wishes(c: Case): readonly Must[] {
  const members = (side: {
    operation: string | null
    kind: string | null
    on: string | null
  }): readonly string[] =>
    c.plan.operations
      .filter(
        (op) =>
          (side.operation === null || op.id === side.operation) &&
          (side.kind === null || op.kind === side.kind) &&
          (side.on === null || op.on.includes(side.on)) &&
          (side.operation !== null || side.kind !== null || side.on !== null),
      )
      .map((op) => op.id)
  return c.given.orderWishes
    .filter((wish) => wish.hard)
    .flatMap((wish) =>
      members(wish.before).flatMap((before) =>
        members(wish.after).map((after) => must(`wish ${wish.id}`, before, after)),
      ),
    )
}

function snagLast(c: Case): readonly Must[] {
  // The floor is read to set heights from it: there is nothing of that to be looked at in the end.
  return c.plan.operations
    .filter((op) => op.id !== 'read-floor:room')
    .map((op) => must('snagging last', op.id, 'snag:room'))
}
