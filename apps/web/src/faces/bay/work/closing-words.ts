import type { OrderState } from '@bayledger/ledger/state'
import { workLimits } from '@bayledger/reckoning/job-plan/work-limits'
import type { Step } from '@bayledger/reckoning/step'
import { torqueWords } from '@bayledger/reckoning/torque/plausible-torque'

const { restraintStopPsi } = workLimits

/** What a technician would mostly write to close a step by hand; anything else may be typed. */
export const closingWords = (state: OrderState, { code, wheel, figure }: Step): readonly string[] => {
  if (figure?.kind === 'torque') return [torqueWords(figure.torque)]
  if (code === 'inflate-tire' && figure?.kind === 'placard') return [`filled to ${figure.psi} psi`]
  if (code === 'inflate-in-restraint' && figure?.kind === 'placard')
    return [`filled to ${figure.psi} psi, nothing seen or heard at ${restraintStopPsi} psi`]
  if (code === 'read-in-rim') return [readWords(state, wheel)]
  return usual[code] ?? ['as the sheet says']
}

const usual: Partial<Readonly<Record<Step['code'], readonly string[]>>> = {
  'find-leak': ['stem', 'valve core', 'tread', 'bead', 'rim', 'sidewall', 'no leak found'],
  'find-leak-after-look': ['stem', 'valve core', 'tread', 'bead', 'rim', 'sidewall', 'no leak found'],
  'seat-in-restraint': [`nothing seen or heard at ${restraintStopPsi} psi, beads seated`],
  'balance-wheel': ['0 oz left, inner and outer', 'the machine shows no figure'],
  'judge-leak': ['repairable', 'not repairable', 'no hole in the tire'],
  'repair-fastener': ['stud and nut renewed', 'nut renewed', 'bolt renewed', 'thread repaired'],
  'repair-leak': ['plug and patch together', 'bead cleaned and sealed', 'stem parts renewed'],
  'check-tires-for-rotation': ['every tire may go where it is to go', 'stopped: the desk knows'],
  'torque-core': ['to the valve maker’s figure'],
  'put-core-back': ['to the valve maker’s figure'],
  'renew-stem': ['stem, core and cap renewed'],
}

const readWords = (state: OrderState, wheel: Step['wheel']): string => {
  const fitted = wheel === null ? null : state.work[wheel]?.fitted
  return fitted ? `${fitted.sensorId} answers, no pressure` : 'answers, no pressure'
}
