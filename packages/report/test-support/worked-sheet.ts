import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { utilitySheet } from '../../reckoning/test-support/utility-sheet.ts'
import { advisor, lead } from './worked-people.ts'

const verified = {
  kind: 'maker-manual' as const,
  reference: 'owner’s manual page 312',
  enteredBy: advisor,
  verifiedBy: lead,
}

const tire = { size: '235/60R18 103H', loadClass: 'SL' as const, sidewallMaximumPsi: 51 }

/** The vehicle type on the worked order's pages: it names its spare tire and no relearn. */
export const workedSheet: SpecificationSheet = {
  ...utilitySheet,
  tire: { front: tire, rear: tire, spare: { ...tire, size: 'T155/90D17', sidewallMaximumPsi: 60 } },
  relearn: null,
  liftNotes: '',
  sources: { placard: verified, studTorque: verified, frequency: verified },
}
