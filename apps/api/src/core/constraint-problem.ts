import { isErrorCode } from '@bayledger/contract/errors'
import { AppError } from './app-error.ts'
import { constraintNamed } from './constraint-named.ts'

/** What the database refused, as a problem; `null` where no request can cause it unless we have a bug. */
export const constraintProblem = (
  error: unknown,
  codeOf: (constraint: string) => string | undefined,
): AppError | null => {
  const name = constraintNamed(error)
  const code = name === null ? undefined : codeOf(name)
  if (code === undefined || code === 'INTERNAL_FAULT' || !isErrorCode(code)) return null
  return new AppError(code, words[code] ?? 'The database did not take this. Correct it and send it again.', {
    cause: error,
  })
}

const words: Readonly<Record<string, string>> = {
  CUSTOMER_NOT_FOUND: 'Search for the customer again, or add a new one.',
  VEHICLE_NOT_FOUND: 'Search for the vehicle again, or add a new one.',
  SHEET_NOT_FOUND: 'Choose a sheet from the list, or leave it empty.',
  ORDER_NOT_FOUND: 'Look for the order on the floor list, or search for its number.',
  VIN_TAKEN: 'Search for the VIN and open that vehicle, or read this one again.',
}
