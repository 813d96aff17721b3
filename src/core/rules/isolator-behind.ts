import { factId } from '../kitchen/fact-id'
import { liesBehind } from '../placing/behind'
import type { Found, Rule, Site } from './rule'

const CUTS_OFF: readonly string[] = ['spur', 'isolator', 'consumer-unit']

function onWall(site: Site, wall: Site['kitchen']['walls'][number]): readonly Found[] {
  const spaces = site.along(wall.id).filter(({ kind }) => kind === 'appliance-space')
  return wall.accessories
    .filter(({ kind, face }) => face === 'room' && CUTS_OFF.includes(kind))
    .flatMap((accessory) => {
      const along = site.survey.along(wall.id, accessory.along)
      const height = site.onFace(wall.id, along, accessory.height)
      return spaces.flatMap((space): readonly Found[] => {
        const lies = liesBehind({ along, height }, space)
        if (lies === 'no') return []
        const unit = site.name(space.unit)
        return [
          {
            subjects: [accessory.id, space.unit],
            about: [accessory.id, space.unit],
            weight: lies === 'yes' ? 'stop' : 'ask',
            said: [
              lies === 'yes' ? 'behind' : 'perhaps',
              { kind: accessory.kind.replace('-', ' '), wall: site.name(wall.id), unit, along },
            ],
            figures: [along, height],
            where: { wall: wall.id, along, height },
            from: [factId('walls', wall.id, 'accessories', accessory.id, 'kind')],
            ask: ['ask'],
          },
        ]
      })
    })
}

/** F36: a switch that cuts an appliance off, behind an appliance. */
export const rule: Rule = {
  id: 'isolator-behind',
  heading: 'A switch or valve out of reach',
  catches: ['F36'],
  dangerous: true,
  basis: {
    kind: 'common-practice',
    why: 'what cuts an appliance off is reached without moving one: above the worktop or in the cupboard beside it',
  },
  why: 'When the dishwasher burns, nobody pulls it out first to switch it off.',
  words: {
    behind:
      'The {kind} on {wall}, at {along} from its left corner, will be behind what goes into {unit}: nobody can reach it then.',
    perhaps:
      'The {kind} on {wall} may be behind what goes into {unit}, where nobody can reach it: measure both.',
    ask: 'Have an electrician move it above the worktop or into the cupboard beside it.',
  },
  check: (site) => site.kitchen.walls.flatMap((wall) => onWall(site, wall)),
}
