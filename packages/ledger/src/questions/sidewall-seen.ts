import { tiresOf } from '@bayledger/reckoning/sheet'
import { compareSizes, type SizeComparison } from '@bayledger/reckoning/tire/compare-sizes'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { type TireAge, tireAge } from '@bayledger/reckoning/tire/tire-age'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState, Recorded, TireRecord } from '../state.ts'
import { latestDayAt, readMade } from '../subjects/arrival/sidewall.ts'

/** A tire's age by the date code that was read on it, on the day of the look; `null` where none was read. */
export const tireAgeSeen = ({ dateCodeSeen, written }: Recorded<TireRecord>): TireAge | null => {
  const day = latestDayAt(written.writtenAt)
  const made = dateCodeSeen?.readable ? readMade(dateCodeSeen.text, day) : null
  return made && tireAge(made, day)
}

/**
 * How the size that was read on a wheel's tire compares with the sheet's; `null` where nobody read one, or where the
 * sheet's own text is no size.
 */
export const sizeComparedAt = (state: OrderState, wheel: WheelPosition): SizeComparison | null => {
  const seen = state.arrival.tires[wheel]?.sizeSeen
  const sheet = tiresOf(state.sheet?.sheet)?.[axleOf(wheel)]
  if (!seen?.readable || !sheet) return null
  const [onTire, bySheet] = [readTireSize(seen.text), readTireSize(sheet.size)]
  return onTire.ok && bySheet.ok ? compareSizes(bySheet.value, onTire.value) : null
}
