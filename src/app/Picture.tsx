import { useMemo, useRef, useState } from 'react'
import type { Operation, Plan } from '../core/plan/types'
import { stagingAt } from '../core/staging'
import { secondsOf } from '../core/staging/staging'
import type { Look } from '../scene/camera/look'
import { Walkthrough } from '../scene/Walkthrough'
import { useActions, useApp } from '../ui/app-context'
import { LookRound } from './LookRound'
import { asChosen, turned, useDrag } from './look-round'
import { useReducedMotion } from './reduced-motion'
import { useMotion } from './use-motion'

interface PictureProps {
  readonly plan: Plan
  readonly operation: Operation
  readonly index: number
}

/** The 3D view of an operation with its buttons: it is done once when it comes to the hook, and again when asked. */
export function Picture({ plan, operation, index }: PictureProps) {
  const reducedMotion = useReducedMotion()
  const seconds = useMemo(() => secondsAt(plan, index), [plan, index])
  const moves = seconds > 0
  const { t, run, ended, again, turnOver } = useMotion(operation.id, seconds, reducedMotion)
  const [look, setLook] = useLook(operation.id)
  const drag = useDrag(look, setLook)
  const actions = useActions()
  const finding = useApp((s) => s.finding)
  const tried = useApp((s) => s.tried)
  const buttons = useRef<HTMLDivElement>(null)
  return (
    <>
      <div className="picture" {...drag}>
        <Walkthrough
          plan={plan}
          index={index}
          t={t}
          run={run}
          onRunEnd={ended}
          reducedMotion={reducedMotion}
          look={look}
          finding={finding}
          tried={tried}
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

/** How long an operation is shown being done, s. */
function secondsAt(plan: Plan, index: number): number {
  const staging = stagingAt(plan, index)
  return staging === null ? 0 : secondsOf(staging)
}
