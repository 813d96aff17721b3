import './heights.css'
import { useState } from 'react'
import { valueOf } from '../../../core/figure'
import type { HeightName } from '../../../core/kitchen/kinds'
import type { Plan } from '../../../core/plan/types'
import { useApp } from '../../app-context'
import { type Block, blocksOf, wantedOn } from './blocks'
import { Clashes } from './Clashes'
import { HeightPanel } from './HeightPanel'
import { NotKnown } from './NotKnown'
import { scaleOf } from './scale'
import { Upright } from './Upright'
import { useWishing } from './use-wishing'
import { wishedAt } from './wished'

/** The height in front before one is chosen. */
const FIRST: readonly HeightName[] = ['worktop-top', 'base-top', 'base-underside']

/** Every height of the kitchen on one scale, with all that wants something from it; each can be moved, as a wish. */
export function HeightsPicture() {
  const plan = useApp((s) => s.plan)
  return (
    <section className="heights-picture" aria-labelledby="heights-picture">
      <h3 id="heights-picture">All heights on one scale</h3>
      {plan === null ? (
        <p className="quiet">There is no plan now, so no height can be told.</p>
      ) : (
        <OfPlan plan={plan} />
      )}
    </section>
  )
}

function OfPlan({ plan }: { readonly plan: Plan }) {
  const kitchen = useApp((s) => s.kitchen)
  const [chosen, setChosen] = useState<HeightName | null>(null)
  const wishing = useWishing()
  const blocks = blocksOf(plan)
  const standsAt = ({ of, at, value }: Block): number => (value.achieved ? at : (wishedAt(kitchen, of) ?? at))
  const floor = valueOf(plan.floor.highPoint.z)
  const scale =
    wishing.held ?? scaleOf(wantedOn(blocks, floor === undefined ? [0] : [0, floor], blocks.map(standsAt)))
  const shown =
    blocks.find(({ of }) => of === chosen) ??
    FIRST.flatMap((of) => blocks.filter((block) => block.of === of))[0] ??
    blocks[0]
  return (
    <>
      <p className="quiet">
        In mm, up (+) and down (−) from the line. Drag a height, or choose it and use the arrow keys: it
        becomes your wish, and all is worked out again.
      </p>
      <NotKnown plan={plan} />
      {shown !== undefined && (
        <div className="heights-two">
          <Upright
            blocks={blocks}
            scale={scale}
            floor={floor}
            chosen={shown.of}
            standsAt={standsAt}
            wishing={wishing}
            onChoose={setChosen}
          />
          <HeightPanel plan={plan} block={shown} at={standsAt(shown)} wishing={wishing} />
        </div>
      )}
      <Clashes plan={plan} />
    </>
  )
}
