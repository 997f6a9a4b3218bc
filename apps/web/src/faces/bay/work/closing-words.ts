import { holesAt, punctureVerdictAt } from '@bayledger/ledger/questions/puncture'
import type { OrderState } from '@bayledger/ledger/state'
import { workLimits } from '@bayledger/reckoning/job-plan/work-limits'
import type { Step } from '@bayledger/reckoning/step'
import { torqueWords } from '@bayledger/reckoning/torque/plausible-torque'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

const { restraintStopPsi } = workLimits

/** What a technician would mostly write to close a step by hand; anything else may be typed. */
export const closingWords = (state: OrderState, { code, wheel, figure }: Step): readonly string[] => {
  if (figure?.kind === 'torque') return [torqueWords(figure.torque)]
  if (code === 'inflate-tire' && figure?.kind === 'placard') return [`filled to ${figure.psi} psi`]
  if (code === 'inflate-in-restraint' && figure?.kind === 'placard')
    return [`filled to ${figure.psi} psi, nothing seen or heard at ${restraintStopPsi} psi`]
  if (code === 'read-in-rim') return [readWords(state, wheel)]
  if (code === 'judge-leak' && wheel !== null) return judgedWords(state, wheel)
  return usual[code] ?? ['as the sheet says']
}

const usual: Partial<Readonly<Record<Step['code'], readonly string[]>>> = {
  'find-leak': ['stem', 'valve core', 'tread', 'bead', 'rim', 'sidewall', 'no leak found'],
  'find-leak-after-look': ['stem', 'valve core', 'tread', 'bead', 'rim', 'sidewall', 'no leak found'],
  'seat-in-restraint': [`nothing seen or heard at ${restraintStopPsi} psi, beads seated`],
  'repair-fastener': ['stud and nut renewed', 'nut renewed', 'bolt renewed', 'thread repaired'],
  'repair-leak': ['plug and patch together', 'bead cleaned and sealed', 'stem parts renewed'],
  'check-tires-for-rotation': ['stopped: the desk knows'],
  'torque-core': ['to the valve maker’s figure'],
  'put-core-back': ['to the valve maker’s figure'],
  'renew-stem': ['stem, core and cap renewed'],
}

/** Whether a hole may be repaired is computed from the look inside; nobody types a verdict of their own. */
const judgedWords = (state: OrderState, wheel: WheelPosition): readonly string[] => {
  if ((holesAt(state, wheel) ?? []).length === 0)
    return ['no hole: bead or rim cleaned and sealed', 'no hole: the stem gets new parts', 'no leak found']
  return punctureVerdictAt(state, wheel)?.verdict === 'repairable'
    ? ['repairable: plug and patch together']
    : ['not repairable: the tire is replaced']
}

const readWords = (state: OrderState, wheel: Step['wheel']): string => {
  const fitted = wheel === null ? null : state.work[wheel]?.fitted
  return fitted ? `${fitted.sensorId} answers, no pressure` : 'answers, no pressure'
}
