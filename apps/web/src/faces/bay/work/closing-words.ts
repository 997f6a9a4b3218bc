import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import { torqueWords } from '@bayledger/reckoning/torque/plausible-torque'

/** What a technician would mostly write to close a step by hand; anything else may be typed. */
export const closingWords = (state: OrderState, { code, wheel, figure }: Step): readonly string[] => {
  if (figure?.kind === 'torque') return [torqueWords(figure.torque)]
  if (code === 'read-in-rim') return [readWords(state, wheel)]
  return usual[code] ?? ['as the sheet says']
}

const usual: Partial<Readonly<Record<Step['code'], readonly string[]>>> = {
  'find-leak': ['stem', 'valve core', 'tread', 'bead', 'rim', 'sidewall', 'no leak found'],
  'judge-leak': ['repairable', 'not repairable', 'no hole in the tire'],
  'repair-leak': ['plug and patch together', 'bead cleaned and sealed', 'stem parts renewed'],
  'check-tires-for-rotation': ['every tire may go where it is to go', 'stopped: the desk knows'],
  'torque-core': ['to the valve maker’s figure'],
  'renew-stem': ['stem, core and cap renewed'],
}

const readWords = (state: OrderState, wheel: Step['wheel']): string => {
  const fitted = wheel === null ? null : state.work[wheel]?.fitted
  return fitted ? `${fitted.sensorId} answers, no pressure` : 'answers, no pressure'
}
