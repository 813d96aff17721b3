import { lazy, Suspense } from 'react'
import { hasWebGl } from '../scene/web-gl'
import { indexOf } from '../state/store'
import { useApp } from '../ui/app-context'
import { Guard } from './Guard'
import { FlatPicture } from './places'

/** The 3D part, loaded when it is first shown. */
const Picture = lazy(() => import('./Picture').then((m) => ({ default: m.Picture })))

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
