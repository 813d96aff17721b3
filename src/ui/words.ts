import type { Message } from '../core/message'
import { say } from '../core/words/say'
import type { Stage } from '../core/plan/types'

export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  'check-delivery': 'Check delivery',
  'make-safe': 'Make safe',
  survey: 'Survey',
  'set-out': 'Set out',
  'walls-ready': 'Walls ready',
  assemble: 'Assemble',
  talls: 'Tall units',
  'wall-units': 'Wall units',
  'corner-base': 'Corner base',
  'base-units': 'Base units',
  'end-panels': 'End panels',
  'hold-point': 'Hold point',
  worktops: 'Worktops',
  'connect-and-test': 'Connect and test',
  'fronts-and-plinths': 'Fronts, plinths',
  snag: 'Snag',
}

export const words = (message: Message): string => say(message)
