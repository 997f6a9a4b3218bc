import { makerCode } from '@bayledger/reckoning/vehicle/maker-code'
import { modelYear } from '@bayledger/reckoning/vehicle/model-year'
import { vinRegion } from '@bayledger/reckoning/vehicle/region'
import { readVin } from '@bayledger/reckoning/vehicle/vin'
import { vinWords } from '@bayledger/reckoning/words/typed-text'

/** The hint below a VIN while it is typed: what is wrong once it is complete, or what it says about the vehicle. */
export const vinHint = (typed: string): string => {
  const read = readVin(typed)
  if (read.ok) return read.value.advice.length > 0 ? read.value.advice.join(' ') : whatItTells(read.value.vin)
  return read.fault === 'length'
    ? '17 characters; leave empty if it cannot be read'
    : `Not a VIN yet: ${read.allowed}. ${read.do}`
}

const whatItTells = (vin: string): string => {
  const region = vinRegion(vin)
  const from = [`Maker ${makerCode(vin).code}`, region?.country ?? region?.region].filter(Boolean).join(', ')
  const year = modelYear(vin)
  return year === null
    ? `${from}; it names no model year.`
    : `${from}; model year ${year} for ${vinWords.modelYearHoldsFor}.`
}
