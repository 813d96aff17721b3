/**
 * The picture twice over, as it is and in ids, for measuring what is really seen in it. `window.measureView` draws an
 * operation and says what was found.
 */
import '@fontsource-variable/atkinson-hyperlegible-mono'
import { createRoot } from 'react-dom/client'
import { standingAt } from '../../../../src/core/plan/standing-at'
import type { Carriage } from '../../../../src/core/plan/travel-path'
import type { Plan, RoomPoint } from '../../../../src/core/plan/types'
import type { Framing } from '../../../../src/core/views/frame-view'
import { roundedAspect, viewsOf } from '../../../../src/core/views/views'
import { Walkthrough, type WalkthroughProps } from '../../../../src/scene/Walkthrough'
import { type Asked, askedOf } from '../asked'
import { standsOut } from '../contrast'
import type { Extent, Measured, MeasuredMoment, MeasuredView } from '../measured'
import {
  alone,
  boxes,
  countIds,
  DISC,
  type Drawn,
  disc,
  drawnIn,
  idOf,
  occluder,
  type Pixels,
  piece,
  project,
  render,
} from '../passes'
import { touchingLabels } from '../touching'

export interface MeasureOptions {
  /** A camera in place of the chosen one. */
  readonly camera?: Framing
  /** Something put before the part in hand. */
  readonly plant?: boolean
}
declare global {
  interface Window {
    lintPlan?: Plan
    measureView?: (index: number, options?: MeasureOptions) => Promise<Measured>
  }
}

const hosts = { seen: elementOf('seen'), ids: elementOf('ids') }
const roots = { seen: createRoot(hosts.seen), ids: createRoot(hosts.ids) }
let names: readonly string[] = []

function elementOf(id: string): HTMLElement {
  const found = document.getElementById(id)
  if (found === null) throw new Error(`no ${id}`)
  return found
}

const frameOf = (host: HTMLElement) => host.querySelector('.scene')?.getAttribute('data-frame') ?? ''
const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve))

/** Shows a moment and waits until it is drawn and nothing moves any more. */
async function show(which: 'seen' | 'ids', props: Omit<WalkthroughProps, 'reducedMotion'>): Promise<void> {
  const before = frameOf(hosts[which])
  const isIds = which === 'ids'
  roots[which].render(
    <Walkthrough
      {...props}
      reducedMotion
      {...(isIds
        ? { idBuffer: EVERYTHING, onReady: (r: { parts: readonly string[] }) => (names = r.parts) }
        : {})}
    />,
  )
  const start = performance.now()
  let [last, still] = [before, 0]
  while (still < 2 && performance.now() - start < 20_000) {
    await nextFrame()
    const now = frameOf(hosts[which])
    const hasDrawn = now !== before || performance.now() - start > 1500
    still = now === last && hasDrawn && isThere(hosts[which], props) ? still + 1 : 0
    last = now
  }
  if (still < 2) throw new Error(`the picture of operation ${props.index} does not come to rest`)
}

/** Whether the picture on the page is of that operation, and its camera where it was chosen to be. */
function isThere(
  host: HTMLElement,
  { plan, index, camera }: Omit<WalkthroughProps, 'reducedMotion'>,
): boolean {
  const scene = host.querySelector<HTMLElement>('.scene')
  const canvas = host.querySelector('canvas')
  if (scene === null || canvas === null || scene.dataset['operation'] !== plan.operations[index]?.id)
    return false
  const { eye } = camera ?? viewsOf(plan, roundedAspect(host.clientWidth, host.clientHeight)).at(index)
  const is = cameraOf(drawnIn(canvas)).eye
  return Math.hypot(is.x - eye.x, is.y - eye.y, is.z - eye.z) < 2
}
const EVERYTHING = {}

const canvasOf = (host: HTMLElement): HTMLCanvasElement => {
  const canvas = host.querySelector('canvas')
  if (canvas === null) throw new Error('no picture')
  return canvas
}

window.measureView = async (index, options = {}) => {
  const plan = window.lintPlan
  if (plan === undefined) throw new Error('no plan')
  const asked = askedOf(plan, index)
  return { index, views: [await measured(plan, index, asked, options)] }
}

async function measured(
  plan: Plan,
  index: number,
  asked: Asked,
  options: MeasureOptions,
): Promise<MeasuredView> {
  const moments: MeasuredMoment[] = []
  const given = options.camera === undefined ? {} : { camera: options.camera }
  let early: Pick<
    MeasuredView,
    'fixings' | 'contacts' | 'standsOut' | 'level' | 'eye' | 'looks' | 'way' | 'cutAway'
  > | null = null
  let newMarks: readonly string[] = []
  for (const t of asked.moments) {
    const isEarly = t === asked.early
    await show('ids', { plan, index, t, ...given })
    const drawn = drawnIn(canvasOf(hosts.ids))
    const active = new Set(asked.active.map((name) => names.indexOf(name)).filter((id) => id >= 0))
    const planted = options.plant === true ? plant(drawn, asked, plan, index, t) : null
    const full = render(drawn, drawn.scene)
    const own = active.size === 0 ? null : render(drawn, alone(drawn.scene, [...active]))
    const seen = total(full, active)
    if (isEarly) {
      early = {
        ...cameraOf(drawn),
        cutAway: cutAwayOf(drawn, full, asked, plan, index, t),
        fixings: discsSeen(drawn, asked, full),
        contacts: piecesSeen(drawn, asked),
        way: wayIn(drawn, asked),
        standsOut: null,
        level: total(full, new Set(names.flatMap((n, id) => (n.startsWith('level:') ? [id] : [])))),
      }
    }
    let labels: { count: number; touching: readonly string[] } = { count: 0, touching: [] }
    if (isEarly || t === 1) {
      await show('seen', { plan, index, t, ...given })
      if (isEarly && early !== null && own !== null) {
        const real = drawnIn(canvasOf(hosts.seen))
        const idsOf = (of: RegExp) =>
          names.flatMap((name, id) => (of.test(name) && !active.has(id) ? [id] : []))
        const pictures = { full, own, seen: render(real, real.scene) }
        early = {
          ...early,
          standsOut: standsOut(
            pictures,
            active,
            new Set(idsOf(/^(unit|part|front):/)),
            new Set(idsOf(/^(wall:|floor|room)/)),
          ),
        }
      }
      const marks = asked.marks
        .filter((m) => full !== null && names.includes(`hole:${m.id}`))
        .flatMap((m) => project(drawn, m.at) ?? [])
        .map((p) => ({ x: p.x, y: drawn.height - p.y, radius: DISC }))
      labels = touchingLabels(hosts.seen, marks, own === null ? null : { own, full, active })
      if (isEarly) newMarks = newMarksIn(hosts.seen)
    }
    if (planted !== null) drawn.scene.remove(planted)
    moments.push({
      t,
      alone: own === null ? 0 : total(own, active),
      seen,
      pixels: drawn.width * drawn.height,
      labels: labels.count,
      touching: labels.touching,
    })
  }
  if (early === null) throw new Error('no moment')
  return { ...early, moments, newMarks }
}

function total(pixels: Pixels, active: ReadonlySet<number>): number {
  const counts = countIds(pixels)
  return [...active].reduce((sum, id) => sum + (counts.get(id) ?? 0), 0)
}

/** Put between the eye and the part in hand. */
function plant(drawn: Drawn, asked: Asked, plan: Plan, index: number, t: number) {
  const units = standingAt(plan, index, t).units.filter((u) => u.isInHand)
  const at = units[0]?.pose ?? asked.fixings[0]?.at ?? asked.way[0]
  if (at === undefined) return null
  const { eye } = cameraOf(drawn)
  // So near the eye that it hides the place as well as the part.
  const mix = (a: number, b: number) => a + 0.75 * (b - a)
  const made = occluder({ x: mix(at.x, eye.x), y: mix(at.y, eye.y), z: mix(at.z + 300, eye.z) }, 600)
  drawn.scene.add(made)
  return made
}

function cameraOf({ camera }: Drawn): { eye: RoomPoint; looks: RoomPoint } {
  const { x, y, z } = camera.position
  const m = camera.matrixWorld.elements
  return {
    eye: { x: x * 1000, y: -z * 1000, z: y * 1000 },
    // A camera of three looks down its own −z.
    looks: { x: -(m[8] ?? 0), y: m[10] ?? 0, z: -(m[9] ?? 0) },
  }
}

/**
 * Units and boards that stand in the room at that moment, have no faces in the picture, and would stand before the part in
 * hand or a fixing point if they had. What is left out with a wall behind the eye and stands before nothing is not counted.
 */
function cutAwayOf(
  drawn: Drawn,
  full: Pixels,
  asked: Asked,
  plan: Plan,
  index: number,
  t: number,
): readonly string[] {
  const shown = new Set(names)
  const standing = standingAt(plan, index, t)
  const active = new Set(asked.active.map((name) => names.indexOf(name)).filter((id) => id >= 0))
  const bodies = [
    ...standing.units
      .filter((u) => u.unit.kind !== 'appliance-space' && u.unit.solid.length > 0)
      .map((u) => ({ name: `unit:${u.unit.unit}`, at: u as Carriage, solid: u.unit.solid })),
    ...standing.parts.flatMap(({ part }) =>
      part.pose === null
        ? []
        : [{ name: `part:${part.part}`, at: { pose: part.pose, tilt: null } as Carriage, solid: part.solid }],
    ),
  ].filter((b) => !shown.has(b.name))
  return bodies.flatMap(({ name, at, solid }) => {
    const id = names.length
    const made = boxes(at, solid, id)
    drawn.scene.add(made)
    const before = render(drawn, drawn.scene)
    drawn.scene.remove(made)
    return covers(before, full, id, active, asked, drawn) ? [name] : []
  })
}

/** Whether a body of this id is drawn over the part in hand, or over the middle of a fixing point. */
function covers(
  before: Pixels,
  full: Pixels,
  id: number,
  active: ReadonlySet<number>,
  asked: Asked,
  drawn: Drawn,
): boolean {
  const at = (p: Pixels, i: number) => idOf(p.data[i] ?? 0, p.data[i + 1] ?? 0, p.data[i + 2] ?? 0)
  for (let i = 0; i < full.data.length; i += 4) {
    if (at(before, i) === id && active.has(at(full, i))) return true
  }
  return asked.fixings.some((f) => {
    const p = Number.isNaN(f.at.x) ? null : project(drawn, f.at)
    return p !== null && at(before, (Math.round(p.y) * drawn.width + Math.round(p.x)) * 4) === id
  })
}

/** Of the disc of 8 px round each fixing point, the share in front of which nothing stands. Marks don't hide marks. */
function discsSeen(drawn: Drawn, asked: Asked, full: Pixels): Record<string, number> {
  const seen: Record<string, number> = {}
  const counts = countIds(full)
  const marks = marksOf(drawn)
  for (const m of marks) m.visible = false
  for (const group of apart(drawn, asked)) {
    const discs = group.map((f) => disc(f.at, names.length + f.number))
    drawn.scene.add(...discs)
    const all = countIds(render(drawn, drawn.scene))
    drawn.scene.remove(...discs)
    const only = alone(drawn.scene, [])
    only.add(...discs)
    const own = countIds(render(drawn, only))
    for (const f of group) {
      const id = names.length + f.number
      const whole = own.get(id) ?? 0
      // A mark that the picture does not draw at all is not seen, whatever is free before its place.
      const isDrawn = (counts.get(names.indexOf(`hole:${f.id}`)) ?? 0) > 0
      seen[f.id] = !isDrawn || whole < DISC * DISC * 2 ? 0 : (all.get(id) ?? 0) / whole
    }
  }
  for (const m of marks) m.visible = true
  for (const f of asked.fixings) seen[f.id] ??= 0
  return seen
}

/** Round marks and bars of the picture, which lie over what they mark. */
function marksOf(drawn: Drawn): readonly { visible: boolean }[] {
  const marks: { visible: boolean }[] = []
  drawn.scene.traverse((o) => {
    if (['ring', 'dot', 'bar'].includes(o.name)) marks.push(o)
  })
  return marks
}

/** Fixing points in groups, so that no two discs of a group touch. */
function apart(drawn: Drawn, asked: Asked) {
  type Numbered = Asked['fixings'][number] & { number: number; x: number; y: number }
  const groups: Numbered[][] = []
  for (const [number, f] of asked.fixings.entries()) {
    const at = Number.isNaN(f.at.x) ? null : project(drawn, f.at)
    if (at === null) continue
    const one = { ...f, number, ...at }
    const free = groups.find((g) => g.every((o) => Math.hypot(o.x - at.x, o.y - at.y) > 2 * DISC + 2))
    if (free === undefined) groups.push([one])
    else free.push(one)
  }
  return groups
}

function piecesSeen(drawn: Drawn, asked: Asked): Record<string, number> {
  const seen: Record<string, number> = {}
  const marks = marksOf(drawn)
  for (const m of marks) m.visible = false
  for (const { id, corners } of asked.contacts) {
    const spots = corners.map((c) => project(drawn, c))
    if (spots.some((s) => s === null)) continue
    const turned = areaOf(spots as { x: number; y: number }[])
    const area = Math.abs(turned)
    // The face of a wall goes round against the clock as the room sees it; from behind there is no wall.
    if (area < 4 || (id.startsWith('wall:') && turned < 0)) {
      seen[id] = 0
      continue
    }
    const quad = piece(corners, names.length)
    drawn.scene.add(quad)
    seen[id] = Math.min(1, (countIds(render(drawn, drawn.scene)).get(names.length) ?? 0) / area)
    drawn.scene.remove(quad)
    if ((seen[id] ?? 0) >= 0.25) break
  }
  for (const m of marks) m.visible = true
  return seen
}

function areaOf(spots: readonly { x: number; y: number }[]): number {
  let sum = 0
  for (const [i, a] of spots.entries()) {
    const b = spots[(i + 1) % spots.length] ?? a
    sum += a.x * b.y - b.x * a.y
  }
  return sum / 2
}

function wayIn(drawn: Drawn, asked: Asked): Extent | null {
  if (asked.way.length === 0) return null
  const spots = asked.way.map((p) => project(drawn, p))
  // A corner behind the eye is out of the picture, far.
  const xs = spots.map((s) => (s === null ? -1 : s.x / drawn.width))
  const ys = spots.map((s) => (s === null ? -1 : s.y / drawn.height))
  return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) }
}

/** Dimensions, cautions and flags written in a picture, and the lines struck in this step. */
function newMarksIn(host: HTMLElement): readonly string[] {
  return [...host.querySelectorAll<HTMLElement>('.scene-labels [data-label]')]
    .filter((n) => n.style.visibility === 'visible')
    .map((n) => n.dataset['label'] ?? '')
    .filter((id) => {
      const node = host.querySelector(`[data-label="${CSS.escape(id)}"]`)
      const isStruckNow = id.startsWith('line:') && node?.hasAttribute('data-strong') === true
      return /^(dimension|keep-clear|flag|mark):/.test(id) || isStruckNow
    })
}
