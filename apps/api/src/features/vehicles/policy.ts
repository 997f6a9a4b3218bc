import { readVin } from '@bayledger/reckoning/vehicle/vin'
import { AppError } from '../../http/app-error.ts'

/** A VIN as it is stored: capital letters, no blanks. Refused with words when it cannot be one. */
export const plainVin = (typed: string): string => {
  const read = readVin(typed)
  if (read.ok) return read.vin
  throw new AppError('VIN_INVALID', `A VIN has ${read.allowed}. ${read.do}`, {
    fields: [{ field: 'vin', found: typed, allowed: read.allowed }],
  })
}
