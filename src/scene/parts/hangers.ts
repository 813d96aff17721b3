import { hasValue } from '../../core/figure'
import type { Standing, StandingUnit } from '../../core/plan/standing-at'
import { extentOf } from '../../core/plan/travel-path'
import type { Plan } from '../../core/plan/types'
import { HANGER } from '../../core/views/carcass'
import { palette } from '../palette'
import { type BoxShades, boxEdges, boxFaces, type Pen, type Place, type Sketch } from '../sketch'

/** A hanger's body as it is drawn, mm: it sits against the back, right under the top panel. Sizes differ from maker to maker. */
const BODY = { wide: 34, deep: 24, high: 62 } as const
/** Of its two screws: how wide, how far they stand out, how far above and below its middle. */
const SCREW = { half: 5, out: 5, off: 15 } as const
const steel: BoxShades = {
  front: '#A9A49A',
  top: '#B9B4AA',
  left: '#8F8A80',
  right: '#9B968C',
  back: '#8F8A80',
  under: '#7F7A71',
}
const dark: BoxShades = {
  front: '#4A463F',
  top: '#5C574E',
  left: '#4A463F',
  right: '#4A463F',
  back: '#4A463F',
  under: '#4A463F',
}
const pen: Pen = { weight: 'hair', colour: palette.ink }

/** The hangers in the top corners of a unit that hangs by them, from the step they are fitted at; each where its screw is known. */
export function sketchHangers(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  { unit }: StandingUnit,
  place: Place,
): void {
  const fitted = plan.operations.findIndex((o) => o.kind === 'fit-hangers' && o.on.includes(unit.unit))
  const now = plan.operations.findIndex((o) => o.id === standing.operation?.id)
  if (now >= 0 && now < fitted) return
  const { height } = extentOf(unit.solid)
  for (const { kind, id, x } of unit.adjusters) {
    if (kind !== 'height-screw' || !hasValue(x)) continue
    const part = `hanger:${unit.unit}.${id}`
    const top = height - HANGER.below + BODY.high / 2
    const body = {
      x0: x.value - BODY.wide / 2,
      x1: x.value + BODY.wide / 2,
      y0: HANGER.out - BODY.deep,
      y1: HANGER.out,
      z0: top - BODY.high,
      z1: top,
    }
    boxFaces(sketch, part, steel, place, body)
    boxEdges(sketch, part, pen, place, body)
    for (const off of [-SCREW.off, SCREW.off]) {
      const z = top - BODY.high / 2 + off
      boxFaces(sketch, part, dark, place, {
        x0: x.value - SCREW.half,
        x1: x.value + SCREW.half,
        y0: body.y1,
        y1: body.y1 + SCREW.out,
        z0: z - SCREW.half,
        z1: z + SCREW.half,
      })
    }
  }
}
