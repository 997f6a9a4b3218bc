import type { ReportProofWording } from '../../report/proof.ts'
import { reportCells } from './cells.ts'
import { lightSeen } from './light-seen.ts'
import { listed } from './listed.ts'

const methods = {
  automatic: 'automatic: the vehicle learns while it is driven',
  stationary: 'stationary: each wheel triggered in turn',
  connector: 'IDs sent through the diagnostic connector',
  reset: 'reset',
} as const

const results = {
  learned: 'accepted by the vehicle',
  refused: 'refused by the vehicle',
  'learns-while-driven': 'the vehicle learns while it is driven',
} as const

export const reportProof: ReportProofWording = {
  title: 'Relearn and proof',
  verdict: (word, words) => `${word}: ${words}.`,
  relearn: ({ method, result, confirmed, took, by, moment }) =>
    `Relearn: ${methods[method]}; ${results[result]}; positions confirmed: ${confirmed.length === 0 ? 'none' : listed(confirmed)}${took}. ${by}, ${moment}.`,
  noRelearn: 'Relearn: none recorded.',
  light: (seen) =>
    `The warning light at the closing check: ${seen === null ? reportCells.notChecked : `${lightSeen(seen)}${seen.took}`}.`,
  noDrive: 'Proof drive: none recorded.',
  drives: {
    caption: 'Proof drive',
    columns: {
      by: 'Driven by',
      driven: 'Driven',
      clock: 'By the clock',
      odometerOut: 'Odometer at its start',
      odometerIn: 'Odometer at its end',
      light: 'Light at the end',
      key: 'Key off, key on',
    },
  },
  notTimed: 'not timed',
  lightOff: 'off',
  lamp: {
    'lights-and-goes-out': 'lit at key-on and went out',
    'stays-lit': 'stayed lit',
    dark: 'stayed dark at key-on',
  },
  odometerReadTwice:
    'The odometer of this drive was unlikely beside what it read before. It was read a second time.',
  slept: 'The tablet slept or was started anew during this drive; the time is by its clock of the day.',
  doubted: (typed, clock) =>
    `${typed} min were written down for this drive; the clock has time for ${clock}. The minutes do not count for the proof.`,
  left: (by, moment) => `The vehicle left for the drive: ${by}, ${moment}.`,
}
