import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { canonicalText } from '../digests.ts'

/** What a diagnosis lets an estimate offer, as text to compare: codes, wheels and offers, whatever their order. */
export const offersOf = (diagnosis: Diagnosis | undefined): string =>
  canonicalText(
    (diagnosis?.findings ?? [])
      .filter(({ offers }) => offers.length > 0)
      .map(({ code, wheels, offers }) => canonicalText([code, wheels.toSorted(), offers.toSorted()]))
      .toSorted(),
  )
