/**
 * Every code that a problem reply may carry, with its status. Nouns first. Its words, `title` and `detail`, are in
 * `packages/wording/src/en/problems.ts`.
 * A refused *entry* carries the ledger's own code beside these (see `entries.ts`): refusing one is not a failed call.
 */
export const errorStatuses = {
  REQUEST_UNREADABLE: 400,
  REQUEST_TOO_LARGE: 413,
  REQUEST_NOT_JSON: 415,
  FIELDS_INVALID: 422,
  ROUTE_NOT_FOUND: 404,
  TOO_MANY_REQUESTS: 429,
  SERVICE_UNAVAILABLE: 503,
  INTERNAL_FAULT: 500,
  REQUEST_FROM_ELSEWHERE: 403,

  SESSION_MISSING: 401,
  SESSION_EXPIRED: 401,
  SIGN_IN_REFUSED: 401,
  PIN_REFUSED: 401,
  SIGN_IN_BLOCKED: 429,
  SECOND_PERSON_REFUSED: 422,
  DEVICE_UNKNOWN: 401,
  ENROLLMENT_CODE_REFUSED: 422,
  ACCESS_REFUSED: 403,
  LINK_REFUSED: 401,

  CUSTOMER_NOT_FOUND: 404,
  VEHICLE_NOT_FOUND: 404,
  SHEET_NOT_FOUND: 404,
  ORDER_NOT_FOUND: 404,
  ORDER_WITHHELD: 403,
  REPORT_NOT_FOUND: 404,
  LINK_NOT_FOUND: 404,
  REFUSED_ENTRY_NOT_FOUND: 404,

  VERSION_MISSING: 428,
  VERSION_STALE: 412,
  IDEMPOTENCY_KEY_MISSING: 428,
  IDEMPOTENCY_KEY_REUSED: 422,
  VIN_INVALID: 422,
  VIN_TAKEN: 409,
  ORDER_READ_ONLY: 423,
  ENTRY_REFUSED: 422,
  EVIDENCE_INVALID: 422,
  REPORT_NOT_DUE: 409,
} as const satisfies Record<string, number>

export type ErrorCode = keyof typeof errorStatuses

export const errorCodes = Object.keys(errorStatuses) as ErrorCode[]

export const isErrorCode = (text: string): text is ErrorCode => Object.hasOwn(errorStatuses, text)
