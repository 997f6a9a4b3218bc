import { wheelNames } from '@bayledger/reckoning/wheels'
import type { Conflict, OrderState } from '../state.ts'

/** Facts that two devices recorded differently; a person withdraws one. */
export const openConflicts = (state: OrderState): Conflict[] => state.conflicts.filter(({ agree }) => !agree)

export const conflictWords = ({ fact, wheel, phase }: Conflict): string =>
  `Two devices recorded the ${wheel ? `${wheelNames[wheel]} ` : ''}${factWords[fact]} differently${phase === 'closing' ? ' at the closing check' : ''}. Withdraw the wrong record.`

const factWords: Readonly<Record<Conflict['fact'], string>> = {
  gauge: 'pressure',
  sensor: 'sensor',
  stem: 'stem',
  valve: 'valve',
  tread: 'tread depth',
  'tire-damage': 'tire damage',
  'fastener-damage': 'fastener damage',
  'control-module': "vehicle's stored IDs and codes",
  'warning-light': 'warning light',
}
