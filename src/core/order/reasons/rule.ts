import type { Job } from '../../operations/job'
import type { OrderReason } from '../../plan/types'
import type { Work } from '../work'

/** One rule of order: all the reasons it gives in this kitchen. A rule never knows another rule. */
export type OrderRule = (job: Job, work: Work) => readonly OrderReason[]
