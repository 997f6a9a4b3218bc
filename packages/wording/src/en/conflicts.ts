import type { Conflict } from '@bayledger/ledger/state'
import type { ConflictsWording } from '../conflicts.ts'
import { wheels } from './wheels.ts'

const facts: Readonly<Record<Conflict['fact'], string>> = {
  gauge: 'pressure',
  sensor: 'sensor',
  stem: 'stem',
  valve: 'valve',
  tread: 'tread depth',
  'tire-size': 'size of the tire',
  'date-code': 'date code of the tire',
  'tire-damage': 'tire damage',
  'fastener-damage': 'fastener damage',
  'control-module': "vehicle's stored IDs and codes",
  'warning-light': 'warning light',
}

export const conflicts: ConflictsWording = (fact, wheel, phase) =>
  `Two devices recorded the ${wheel ? `${wheels.names[wheel]} ` : ''}${facts[fact]} differently${phase === 'closing' ? ' at the closing check' : ''}. Withdraw the wrong record.`
