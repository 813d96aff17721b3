import { factId } from '../../kitchen/fact-id'
import { message } from '../../message'
import { citing } from '../../survey/sum'
import { footName } from '../../units/foot-name'
import { footPlace } from '../footings'
import { type DemandRule, demand, geometry } from './demand'

const packedUp = geometry('a box on shims can be packed up and never down')

/** A box without legs is packed up from the floor: its underside lies on or above the floor at each of its corners. */
export const shimFloor: DemandRule = ({ standing, nameOf }) =>
  standing
    .filter(({ on }) => on === 'its-corners')
    .flatMap(({ id, position, underside, footings }) =>
      footings.map((footing) => {
        const { id: corner, floor } = footing
        return demand('shim-floor', {
          subject: `${id}.${corner}`,
          of: underside,
          min: citing(floor, [factId('units', id, 'stands')]),
          because: message('heights.shim-floor', {
            unit: nameOf(id),
            corner: footName(corner, footPlace(position, footing)),
            floor,
          }),
          basis: packedUp,
          about: [id, `${id}.${corner}`],
        })
      }),
    )
