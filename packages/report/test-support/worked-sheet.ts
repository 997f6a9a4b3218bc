import type { CompleteSheet } from '@bayledger/reckoning/sheet'
import { tarn } from '../../ledger/test-support/tarn.ts'

/** The vehicle type on the worked order's pages: it names its spare tire. */
export const workedSheet: CompleteSheet = {
  ...tarn,
  tire: {
    ...tarn.tire,
    spare: { size: 'T155/90D17', loadClass: 'SL', sidewallMaximumPsi: 60 },
  },
}
