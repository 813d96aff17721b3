import { assemblyWords } from './assembly'
import { basesWords } from './bases'
import { beforeWords } from './before'
import { cautionsWords } from './cautions'
import { checksWords } from './checks'
import { drillingWords } from './drilling'
import { figuresWords } from './figures'
import { findingsWords } from './findings'
import { finishWords } from './finish'
import { hangingWords } from './hanging'
import { joiningWords } from './joining'
import { liftsWords } from './lifts'
import { setOutWords } from './set-out'
import { surveyStepsWords } from './survey-steps'
import { tallsWords } from './talls'
import { toolsWords } from './tools'
import { worktopsWords } from './worktops'

/** What is read at each step: what to do, what to check, what to beware of, what each figure is measured from. */
export const operationsWords = {
  ...assemblyWords,
  ...basesWords,
  ...beforeWords,
  ...cautionsWords,
  ...checksWords,
  ...drillingWords,
  ...figuresWords,
  ...findingsWords,
  ...finishWords,
  ...hangingWords,
  ...joiningWords,
  ...liftsWords,
  ...setOutWords,
  ...surveyStepsWords,
  ...tallsWords,
  ...toolsWords,
  ...worktopsWords,
}
