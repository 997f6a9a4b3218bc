import type { FixedVerdict } from '@bayledger/ledger/questions/verdicts'
import type { VerdictsWording } from '../verdicts.ts'
import { wheels } from './wheels.ts'

const off = (minutes: number): string => `the light was off at the end of ${minutes} minutes of driving`

const failures = {
  'light-on-drive': 'the warning light did not stay off when we drove',
  'light-on-at-closing': 'the warning light is still on at our last check',
  'lamp-dark': 'the warning light does not come on when the key is turned on',
  'relearn-refused': 'the vehicle did not accept its sensors',
  'nothing-authorized': 'the cause is found, and nobody said Yes to work on it',
  'danger-left': 'what makes it unsafe was not repaired',
} as const

const notFixed = (verdict: Extract<FixedVerdict, { verdict: 'not-fixed' }>): string => {
  switch (verdict.why) {
    case 'sensor-silent':
      return `the ${wheels.names[verdict.wheel]} sensor does not answer at our last check`
    case 'id-misplaced':
      return `the vehicle has stored another ID at the ${wheels.names[verdict.wheel]} than that wheel's sensor sends`
    default:
      return failures[verdict.why]
  }
}

const notYetProven = (verdict: Extract<FixedVerdict, { verdict: 'not-yet-proven' }>): string => {
  switch (verdict.why) {
    case 'relearn-set-aside':
      return 'the sensors or tires were not connected to the car here'
    case 'not-driven-enough':
      return verdict.minutes > 0
        ? `driven ${verdict.minutes} of the ${verdict.needed} minutes that a warning may take`
        : `drive ${verdict.needed} minutes to be sure; a warning may take that long to come`
    case 'drive-doubtful':
      return 'the minutes that were written down for the drive and those of the clock differ'
    case 'no-findings':
      return 'we have not said yet what we found'
    case 'nothing-found':
      return 'nothing was found to repair today'
    case 'sensors-unrecognized':
      return `${off(verdict.minutes)}, but only ${verdict.recognized} of ${verdict.sensors} sensors are shown to be recognized by the car`
  }
}

export const verdicts: VerdictsWording = {
  driveNotYetKnown: 'We are still checking your car. Please wait for us.',
  drive: {
    'drive-normally': 'Yes, drive normally.',
    'check-weekly': 'Yes, but check the air each week.',
    'check-each-trip': 'Yes, but check the air before every trip.',
    'on-the-spare': 'Yes, on the spare: keep to the limits on its sidewall.',
    'do-not-drive': 'No. Please do not drive it. Call us.',
  },
  fixed: { proven: 'Proven', 'not-yet-proven': 'Not sure yet', 'not-fixed': 'Not fixed' },
  because: (verdict) => {
    switch (verdict.verdict) {
      case 'proven':
        return verdict.sensors === null
          ? off(verdict.minutes)
          : `car recognizes all ${verdict.sensors} sensors and ${off(verdict.minutes)}`
      case 'not-yet-proven':
        return notYetProven(verdict)
      case 'not-fixed':
        return notFixed(verdict)
    }
  },
}
