import type { Plan } from '../../core/plan/types'
import { wallName } from '../../core/words/plan-names'
import { upperFirst } from '../../core/words/upper-first'
import { sheetsOf, wallSheet } from '../paper/sheets'
import { count } from '../words'
import { roomPlan } from './room-plan'

const HUNG = new Set(['wall', 'corner-wall', 'bridging'])

/** The room seen from above, as a key to its walls: which is which, and what was found on each. */
export function RoomPlan({ plan }: { readonly plan: Plan }) {
  const shape = roomPlan(plan)
  if (plan.walls.length === 0) return null
  const sheets = new Set(sheetsOf(plan).map((s) => s.id))
  return (
    <section className="sheet room-plan">
      <h2>The walls</h2>
      {shape !== null && <Drawing plan={plan} shape={shape} />}
      <ul>
        {plan.walls
          .filter((w) => sheets.has(wallSheet(w.wall)))
          .map((w) => {
            const found = plan.findings.filter((f) => f.where?.wall === w.wall).length
            return (
              <li key={w.wall}>
                <a className="link" href={`#paper/${wallSheet(w.wall)}`}>
                  {upperFirst(wallName(w.wall, plan))}
                </a>
                <span className="quiet">
                  {found === 0 ? 'nothing found here yet' : `${count(found, 'finding')} here`}
                </span>
              </li>
            )
          })}
      </ul>
    </section>
  )
}

function Drawing({
  plan,
  shape: { walls, units, viewBox, text },
}: {
  readonly plan: Plan
  readonly shape: NonNullable<ReturnType<typeof roomPlan>>
}) {
  // What hangs is drawn over what stands, in outline only.
  const sorted = [...units].sort((a, b) => Number(HUNG.has(a.kind)) - Number(HUNG.has(b.kind)))
  return (
    <svg
      viewBox={viewBox}
      role="img"
      aria-label="The room seen from above: its walls and where the units stand."
    >
      {sorted.map(({ unit, kind, corners }) => (
        <polygon
          key={`${unit} ${corners.map((p) => `${p.x} ${p.y}`).join()}`}
          className={HUNG.has(kind) ? 'hung' : kind === 'appliance-space' ? 'space' : 'stands'}
          points={corners.map((p) => `${p.x},${p.y}`).join(' ')}
        />
      ))}
      {walls.map(({ wall, from, to, name }) => (
        <g key={wall}>
          <path className="wall" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
          <text
            fontSize={text}
            textAnchor="middle"
            dominantBaseline="middle"
            transform={`translate(${name.x} ${name.y}) rotate(${name.turn})`}
          >
            {upperFirst(wallName(wall, plan))}
          </text>
        </g>
      ))}
    </svg>
  )
}
