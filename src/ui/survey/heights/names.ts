import { HEIGHT_WORDS } from '../../../core/form/wishes'
import type { HeightName } from '../../../core/kitchen/kinds'
import { upperFirst } from '../../../core/words/upper-first'
import { LINE_NAMES } from '../../paper/wall/line-names'

/** As it is lettered in the picture: "base underside". */
export const shortName = (of: HeightName): string => LINE_NAMES[of]

/** As it is said: "Underside of the base units". */
export const fullName = (of: HeightName): string =>
  upperFirst(HEIGHT_WORDS.find(([value]) => value === of)?.[1] ?? shortName(of))
