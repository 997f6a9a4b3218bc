import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import { torqueWords } from '@bayledger/reckoning/torque/plausible-torque'

/** What a technician would mostly write to close a step by hand; anything else may be typed. */
export const closingWords = (state: OrderState, { stepKey, wheel, figure }: Step): readonly string[] => {
  if (figure?.kind === 'torque') return [torqueWords(figure.torque)]
  if (stepKey.endsWith('.sensor.read-in-rim')) return [readWords(state, wheel)]
  const known = usual.find(([ending]) => stepKey.endsWith(ending))
  return known ? known[1] : ['as the sheet says']
}

const usual: readonly (readonly [ending: string, words: readonly string[]])[] = [
  ['.leak.find', ['stem', 'valve core', 'tread', 'bead', 'rim', 'sidewall', 'no leak found']],
  ['.leak.judge', ['repairable', 'not repairable', 'no hole in the tire']],
  ['.leak.repair', ['plug and patch together', 'bead cleaned and sealed', 'stem parts renewed']],
  ['.rotation.tires', ['every tire may go where it is to go', 'stopped: the desk knows']],
  ['.tire.core', ['to the valve maker’s figure']],
  ['.stem.renew', ['stem, core and cap renewed']],
]

const readWords = (state: OrderState, wheel: Step['wheel']): string => {
  const fitted = wheel === null ? null : state.work[wheel]?.fitted
  return fitted ? `${fitted.sensorId} answers, no pressure` : 'answers, no pressure'
}
