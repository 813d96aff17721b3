import type { Figure } from '../figure';
import type { OperationId, StandingState, UnitId } from '../plan/types';

/** What the day log says has been done, read and reached so far: it replaces what was planned. */
export interface Achieved {
  readonly done: ReadonlySet<OperationId>;
  /** Underside of the carcass re the line, as reached. */
  readonly undersides: ReadonlyMap<UnitId, Figure>;
  readonly states: ReadonlyMap<UnitId, StandingState>;
  /** Floor under one foot as found, re the line, by `unit.foot`. */
  readonly floorAtFoot: ReadonlyMap<string, Figure>;
}

export const nothingAchieved: Achieved = {
  done: new Set(),
  undersides: new Map(),
  states: new Map(),
  floorAtFoot: new Map(),
};
