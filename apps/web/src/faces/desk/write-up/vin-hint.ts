import { modelYear } from '@bayledger/reckoning/vehicle/model-year'
import { readVin } from '@bayledger/reckoning/vehicle/vin'

/** What stands under the VIN while it is typed: what is wrong once it is whole, or the model year it names. */
export const vinHint = (typed: string): string => {
  const read = readVin(typed)
  if (read.ok) {
    const year = modelYear(read.vin)
    const named =
      year === null ? 'It reads as a VIN.' : `It names the model year ${year}, if made for North America.`
    return read.advice === null ? named : read.advice
  }
  return read.fault === 'length'
    ? '17 characters; leave empty if it cannot be read'
    : `Not a VIN yet: ${read.allowed}. ${read.do}`
}
