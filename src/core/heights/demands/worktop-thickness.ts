import { hasValue } from '../../figure'
import { message } from '../../message'
import { worktopName } from '../../units/part-name'
import { type DemandRule, demand, geometry } from './demand'

const onTop = geometry('a worktop lies on the tops of the base units')

/**
 * The worktop's top lies its thickness above the base units. Where worktops differ, the worktop height is that of the
 * thickest, and the others only say that it is no lower than their own.
 */
export const worktopThickness: DemandRule = ({ kitchen }) => {
  const { worktops } = kitchen
  const thickest = Math.max(...worktops.map(({ thickness }) => (hasValue(thickness) ? thickness.value : 0)))
  return worktops.map((top) => {
    const { id, thickness } = top
    const isThinner = hasValue(thickness) && thickness.value < thickest
    return demand('worktop-thickness', {
      subject: id,
      from: 'base-top',
      of: 'worktop-top',
      min: thickness,
      max: isThinner ? null : thickness,
      because: message('heights.worktop-thickness', { worktop: worktopName(kitchen, top), thickness }),
      basis: onTop,
      about: [id],
    })
  })
}
