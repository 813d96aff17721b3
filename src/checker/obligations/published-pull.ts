import type { Hole, UnitPlan } from '../../core/plan/types'
import { round } from '../agree'
import { type Case, wallOf } from '../case'
import type { GivenFixing, GivenUnit, GivenWall } from '../given'
import { isHung } from '../positions'
import { isStudWall, layersInFront } from '../wall-make-up'

/** What hung units hang by, and screws that go straight into timber. */
const TOP_ROW = new Set(['plate', 'rail', 'back-rail', 'cleat'])
const INTO_TIMBER = new Set(['wood-screw', 'bracket-screw', 'lag-screw'])
/** Newtons by which two reckonings may differ. */
const NEAR = 0.5
const INCH = 25.4
const POUND = 4.4482216152605
const CLASSES: ReadonlyMap<string, number> = new Map([
  ['C16', 310],
  ['C24', 350],
])

/**
 * What a published formula gives for a screw: worked out again where the timber has been entered, left out where it has
 * not; and a unit that asks more of its screws than that is told so.
 */
export function checkPublishedPull(c: Case): void {
  for (const plan of c.plan.units) {
    const unit = c.units.get(plan.unit)?.unit
    if (plan.holding !== null && unit !== undefined && isHung(unit)) checkUnit(c, plan, unit)
  }
}

function checkUnit(c: Case, plan: UnitPlan, unit: GivenUnit): void {
  const published = plan.holding?.published
  const wall = wallOf(c, unit.wall)
  const timber = wall === undefined ? 'not entered' : timberOf(c, wall)
  if (wall === undefined || timber === 'not entered') {
    if (published !== undefined)
      c.refuse('published pull', unit.id, 'nobody has entered what the studs are graded as')
    return
  }
  const holes = c.plan.holes.filter(
    (h) => h.for.includes(unit.id) && TOP_ROW.has(h.purpose) && h.stud !== null,
  )
  const screws = holes.flatMap((h) => fixingOf(c, h) ?? [])
  if (published === undefined) {
    const kept = holes.filter((h) => h.verdict !== 'refused' && fixingOf(c, h) !== undefined)
    if (isStudWall(wall) && kept.length > 0)
      c.refuse('published pull', unit.id, 'the timber has been entered, and nothing is said of the formula')
    return
  }
  const screw = screws.find((f) => f.id === published.screw)
  if (screw === undefined) {
    c.refuse('published pull', unit.id, `no hole of it in a stud takes ${published.screw}`)
    return
  }
  const purpose = holes.find((h) => h.fixing === screw.id)
  const own = standOffs(c, unit, purpose).map((off) => pullOf(c, wall, screw, timber, off))
  const said = published.pull === null || published.pull.state === 'unknown' ? null : published.pull.value
  if (said !== null && !own.some((n) => n !== null && Math.abs(n - said) <= NEAR)) {
    const best = own[0] ?? null
    c.refuse(
      'published pull',
      unit.id,
      `the plan says ${said}, worked out again ${best === null ? 'nothing' : round(best)}`,
    )
  }
  const worksOut = own.length > 0 && own.every((n) => n !== null)
  const slack = published.outside === 'penetration' ? published.thread : null
  const near =
    slack !== null && slack.state !== 'unknown' && slack.value - slack.pm < 6 * (screw.diameter.value ?? 0)
  if (said === null && worksOut && !near)
    c.refuse('published pull', unit.id, `no figure is given, yet it works out as ${round(own[0] ?? 0)}`)
  checkTold(c, plan)
}

/** More asked of one screw than the formula gives stops the work, or is told where a maker's figure speaks against it. */
function checkTold(c: Case, { unit, holding }: UnitPlan): void {
  const pull = holding?.published?.pull ?? null
  if (holding === null || pull === null || pull.state === 'unknown') return
  const asked = holding.pullPerFixing
  if (asked.state === 'unknown' || asked.value - asked.pm <= pull.value + pull.pm) return
  const weights = holding.verdict === 'below the figure you entered' ? ['stop', 'warn'] : ['stop']
  const told = c.plan.findings.some(
    (f) => f.rule === 'published-pull' && f.about.includes(unit) && weights.includes(f.weight),
  )
  if (!told) c.refuse('finding missing', unit, 'it asks more of a screw than the published figure')
}

function fixingOf(c: Case, hole: Hole): GivenFixing | undefined {
  return c.given.fixings.find((f) => f.id === hole.fixing && INTO_TIMBER.has(f.kind))
}

/** Characteristic density or specific gravity; null: what was entered cannot be gone by. */
function timberOf(c: Case, { studTimber }: GivenWall): number | null | 'not entered' {
  const { grade, density, gravity } = studTimber
  if (c.given.region === 'north-america') return gravity.value ?? 'not entered'
  if (c.given.region === null || (grade === null && density.value === null)) return 'not entered'
  if (density.value !== null) return grade === null && density.value > 350 ? null : density.value
  return CLASSES.get(grade ?? '') ?? null
}

/** Before the finished face of the wall: the rail or plate, and the packing and gap behind it. */
function standOffs(c: Case, unit: GivenUnit, hole: Hole | undefined): readonly number[] {
  if (hole?.purpose === 'plate') return [2]
  if (hole?.purpose === 'rail')
    return c.given.rails.flatMap((r) =>
      hole.id.startsWith(`rail.${r.id}.`) ? (r.thickness.value ?? []) : [],
    )
  const rail = unit.backRail.thickness.value
  const gap = unit.standOff.value ?? 0
  return rail === null ? [] : [rail, rail + gap, rail + (unit.void.value ?? 0) + gap]
}

/** Newtons, or null where the formula gives none. */
function pullOf(
  c: Case,
  wall: GivenWall,
  screw: GivenFixing,
  timber: number | null,
  standOff: number,
): number | null {
  const [front, long, thick, thread] = [layersInFront(wall), screw.length, screw.diameter, screw.thread].map(
    (m) => m.value,
  )
  const lag = screw.kind === 'lag-screw' && c.given.region === 'north-america'
  const tip = lag ? screw.tip.value : 0
  if (timber === null || front == null || long == null || thick == null || thread == null || tip === null)
    return null
  const stud = wall.layers.find((layer) => layer.material === 'timber-stud')
  const depth = stud === undefined ? Number.POSITIVE_INFINITY : stud.thickness.value
  if (depth === null) return null
  const end = long - standOff - front
  const bites = Math.max(0, Math.min(end - tip, depth) - Math.max(end - thread, 0))
  if (c.given.region === 'north-america') {
    const inches = thick / INCH
    const pounds = lag
      ? 1800 * Math.sqrt(timber) ** 3 * Math.sqrt(Math.sqrt(inches ** 3))
      : 2850 * timber * timber * inches
    return pounds * (bites / INCH) * POUND
  }
  const core = screw.core.value
  const within =
    core !== null && thick >= 6 && thick <= 12 && core >= 0.6 * thick - 1e-6 && core <= 0.75 * thick + 1e-6
  if (!within || bites < 6 * thick - 1e-6) return null
  const strength = (0.52 * timber ** 0.8) / (Math.sqrt(thick) * bites ** 0.1)
  return strength * thick * bites * Math.min(1, thick / 8)
}
