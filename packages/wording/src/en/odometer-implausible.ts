import type { RefusalValues } from '@bayledger/ledger/admit/refusal-values'

/** By itself: the desk says it before anything is sent, and needs no other refusal for that. */
export const odometerImplausible = ({
  why,
  read,
  before,
  daysAgo = null,
}: RefusalValues['ODOMETER_IMPLAUSIBLE']): string => {
  const figure = (distance: typeof read) => `${distance.value.toLocaleString('en-US')} ${distance.unit}`
  // Days are rounded up: one is a visit of today or yesterday.
  const visit =
    daysAgo === null ? 'before' : daysAgo <= 1 ? 'within the last day' : `at a visit ${daysAgo} days ago`
  switch (why) {
    case 'impossible':
      return `${figure(read)} is what a display shows at its end. Read the odometer again, or leave it empty if nobody can read it.`
    case 'backwards':
      return `The odometer read ${before === null ? 'more' : figure(before)} before, and ${figure(read)} is less. Read it again.`
    case 'beyond-drive':
      return `It read ${before === null ? 'less' : figure(before)} later in this visit, so it did not come with ${figure(read)}. Read it again, or correct the later reading.`
    case 'lower':
      return `The odometer read ${before === null ? 'more' : figure(before)} ${visit}, and ${figure(read)} is less. Read it again and confirm it: another instrument may have been fitted since.`
    case 'nines':
      return `${figure(read)} is nothing but nines. Read the odometer again and confirm it.`
    case 'unlikely':
      return before === null || read.value < before.value
        ? `${figure(read)} is more than nearly any vehicle reads. Read the odometer again and confirm it.`
        : `${figure(read)} is far more than ${figure(before)}, which it read ${visit}. Read the odometer again and confirm it.`
  }
}
