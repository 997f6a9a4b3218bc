import { type ErrorCode, isErrorCode } from '@bayledger/contract/errors'
import type { SaidProblem } from '@bayledger/wording/problems'
import { AppError } from './app-error.ts'
import { constraintNamed } from './constraint-named.ts'

/** What the database refused, as a problem; `null` where no request can cause it unless we have a bug. */
export const constraintProblem = (
  error: unknown,
  codeOf: (constraint: string) => string | undefined,
): AppError | null => {
  const name = constraintNamed(error)
  const code = name === null ? undefined : codeOf(name)
  const said = code !== undefined && isErrorCode(code) ? saidOf(code) : null
  return said && new AppError(said, { cause: error })
}

/** Each problem that a broken constraint can mean to the writer. */
const saidOf = (code: ErrorCode): SaidProblem | null => {
  switch (code) {
    case 'CUSTOMER_NOT_FOUND':
    case 'DEVICE_UNKNOWN':
    case 'IDEMPOTENCY_KEY_REUSED':
    case 'LAST_OWNER':
    case 'LINK_NOT_FOUND':
    case 'ORDER_NOT_FOUND':
    case 'SHEET_NOT_FOUND':
    case 'SIGN_IN_NAME_TAKEN':
    case 'VEHICLE_NOT_FOUND':
    case 'VIN_TAKEN':
      return { code }
    case 'FIELDS_INVALID':
      return { code, what: 'values' }
    case 'ENTRY_REFUSED':
      return { code, why: 'known-before' }
    case 'STOCK_NOT_MOVED':
      return { code, why: 'arrived-before' }
    case 'VERSION_STALE':
      return { code, what: 'order' }
    default:
      return null
  }
}
