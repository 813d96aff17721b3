import type { Plan } from '../../core/plan/types'
import { useApp } from '../app-context'
import { NothingOpen } from '../NothingOpen'
import { FirstSheet } from './FirstSheet'
import { HeightsSheet } from './heights/HeightsSheet'
import { type Chosen, chosenIn, sheetsOf, wallSheet } from './sheets'
import { WallSheet } from './WallSheet'
import { WorkSheet } from './WorkSheet'

/** The sheets: one in front on the screen, all of them in print. */
export function OnPaper() {
  const plan = useApp((s) => s.plan)
  const chosen = chosenIn(useApp((s) => s.sheet))
  if (plan === null) return <NothingOpen />
  const sheets = sheetsOf(plan)
  const firstWall = sheets.find((s) => s.id.startsWith('wall:'))
  const front = sheets.find((s) => s.id === chosen.sheet) ?? firstWall ?? sheets[0]
  return (
    <div className="page on-paper">
      <nav className="choices no-print" aria-label="Sheets">
        {sheets.map((s) => (
          <a
            key={s.id}
            className="button"
            href={`#paper/${s.id}`}
            aria-current={s.id === front?.id ? 'true' : undefined}
          >
            {s.name}
          </a>
        ))}
        <button type="button" className="link" onClick={() => window.print()}>
          Print all sheets
        </button>
      </nav>
      {sheets.map((s) => (
        <div key={s.id} className={s.id === front?.id ? undefined : 'only-print'}>
          <Sheet plan={plan} id={s.id} name={s.name} chosen={s.id === chosen.sheet ? chosen : null} />
        </div>
      ))}
    </div>
  )
}

interface SheetProps {
  readonly plan: Plan
  readonly id: string
  readonly name: string
  /** What the address asks for on this sheet. */
  readonly chosen: Chosen | null
}

function Sheet({ plan, id, name, chosen }: SheetProps) {
  const frame = plan.walls.find((w) => wallSheet(w.wall) === id)
  if (frame !== undefined) return <WallSheet plan={plan} frame={frame} name={name} asked={chosen} />
  if (id === 'heights') return <HeightsSheet plan={plan} />
  if (id === 'work') return <WorkSheet plan={plan} />
  return <FirstSheet plan={plan} />
}
