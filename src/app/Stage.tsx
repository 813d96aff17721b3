import { lazy, Suspense, useRef, useState } from 'react'
import type { Operation, Plan } from '../core/plan/types'
import type { Look } from '../scene/camera/look'
import type { WalkthroughProps } from '../scene/Walkthrough'
import { indexOf } from '../state/store'
import { useActions, useApp } from '../ui/app-context'
import { Guard } from './Guard'
import { LookRound } from './LookRound'
import { asChosen, turned, useDrag } from './look-round'
import { FlatPicture } from './places'
import { useReducedMotion } from './reduced-motion'
import { useMotion } from './use-motion'
import { hasWebGl } from './webgl'

/** The 3D part, and with it the words it shows at the places of what has been found. */
const Walkthrough = lazy(async () => {
  const [{ Walkthrough: Scene }, { headingOf }] = await Promise.all([
    import('../scene/Walkthrough'),
    import('../ui/findings/headings'),
  ])
  return { default: (props: WalkthroughProps) => <Scene {...props} headingOf={headingOf} /> }
})

/** The picture beside the slip: the 3D view, loaded late, or the wall drawing where there is none. */
export function Stage() {
  const plan = useApp((s) => s.plan)
  const index = useApp(indexOf)
  const operation = plan?.operations[index]
  if (plan === null || operation === undefined) return null
  const flat = (
    <Suspense fallback={null}>
      <FlatPicture plan={plan} operation={operation} />
    </Suspense>
  )
  if (!hasWebGl()) return flat
  return (
    <Guard instead={flat}>
      <Suspense fallback={<p className="stage-note">The picture is on its way.</p>}>
        <Picture plan={plan} operation={operation} index={index} />
      </Suspense>
    </Guard>
  )
}

interface PictureProps {
  readonly plan: Plan
  readonly operation: Operation
  readonly index: number
}

function Picture({ plan, operation, index }: PictureProps) {
  const reducedMotion = useReducedMotion()
  const moves = operation.path !== null
  const { t, again, turnOver } = useMotion(operation.id, moves, reducedMotion)
  const [look, setLook] = useLook(operation.id)
  const drag = useDrag(look, setLook)
  const actions = useActions()
  const finding = useApp((s) => s.finding)
  const buttons = useRef<HTMLDivElement>(null)
  return (
    <>
      <div className="picture" {...drag}>
        <Walkthrough
          plan={plan}
          index={index}
          t={t}
          reducedMotion={reducedMotion}
          look={look}
          finding={finding}
          onFinding={actions.openFinding}
          covered={buttons}
        />
      </div>
      <LookRound
        box={buttons}
        isTurned={look !== asChosen || finding?.isLookedAt === true}
        onTurn={(turn, tip, closer) => setLook(turned(look, turn, tip, closer))}
        onReset={() => {
          setLook(asChosen)
          actions.lookAtFinding(null)
        }}
        onAgain={moves && !reducedMotion ? again : null}
        onTurnOver={moves && reducedMotion ? turnOver : null}
        isAtEnd={t >= 1}
      />
    </>
  )
}

/** The user's own turn of the view holds for one operation; the next is looked at as it is chosen for it. */
function useLook(id: string): readonly [Look, (look: Look) => void] {
  const [kept, keep] = useState({ id, look: asChosen })
  if (kept.id !== id) keep({ id, look: asChosen })
  return [kept.id === id ? kept.look : asChosen, (look) => keep({ id, look })]
}
