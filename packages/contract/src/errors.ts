type ErrorEntry = { readonly status: number; readonly title: string }

/**
 * Every code that a problem reply may carry, with its status and the words of its title. Nouns first. What is
 * wrong in this case, what is allowed and what to do is in the problem's `detail` and `fields`.
 * A refused *entry* carries the ledger's own code beside these (see `entries.ts`): refusing one is not a failed call.
 */
export const errors = {
  REQUEST_UNREADABLE: { status: 400, title: 'The request cannot be read' },
  REQUEST_TOO_LARGE: { status: 413, title: 'The request is larger than this route takes' },
  REQUEST_NOT_JSON: { status: 415, title: 'This route takes JSON only' },
  FIELDS_INVALID: { status: 422, title: 'Some fields are missing, unknown or out of range' },
  ROUTE_NOT_FOUND: { status: 404, title: 'There is no such address here' },
  TOO_MANY_REQUESTS: { status: 429, title: 'Too many tries in a short time' },
  SERVICE_UNAVAILABLE: { status: 503, title: 'The service cannot work just now' },
  INTERNAL_FAULT: { status: 500, title: 'Something went wrong here' },
  REQUEST_FROM_ELSEWHERE: { status: 403, title: 'The request came from another site' },

  SESSION_MISSING: { status: 401, title: 'Nobody is signed in' },
  SESSION_EXPIRED: { status: 401, title: 'The session has ended' },
  SIGN_IN_REFUSED: { status: 401, title: 'The name or the password is wrong' },
  PIN_REFUSED: { status: 401, title: 'The PIN is wrong' },
  SIGN_IN_BLOCKED: { status: 429, title: 'Too many wrong tries' },
  SECOND_PERSON_REFUSED: { status: 422, title: 'This person cannot be the second person here' },
  DEVICE_UNKNOWN: { status: 401, title: 'This tablet is not enrolled' },
  ENROLLMENT_CODE_REFUSED: { status: 422, title: 'The enrollment code is wrong, used or too old' },
  ACCESS_REFUSED: { status: 403, title: 'This is not open to you' },
  LINK_REFUSED: { status: 401, title: 'The link is unknown, has ended or was withdrawn' },

  CUSTOMER_NOT_FOUND: { status: 404, title: 'There is no such customer' },
  VEHICLE_NOT_FOUND: { status: 404, title: 'There is no such vehicle' },
  SHEET_NOT_FOUND: { status: 404, title: 'There is no such specification sheet' },
  ORDER_NOT_FOUND: { status: 404, title: 'There is no such order' },
  ORDER_WITHHELD: { status: 403, title: 'This order is read at the desk only' },
  REPORT_NOT_FOUND: { status: 404, title: 'There is no such report' },
  LINK_NOT_FOUND: { status: 404, title: 'There is no such link' },
  REFUSED_ENTRY_NOT_FOUND: { status: 404, title: 'There is no such refused entry' },

  VERSION_MISSING: { status: 428, title: 'The version that you read is missing' },
  VERSION_STALE: { status: 412, title: 'Someone saved this in the meantime' },
  IDEMPOTENCY_KEY_MISSING: { status: 428, title: 'The request carries no Idempotency-Key' },
  IDEMPOTENCY_KEY_REUSED: { status: 422, title: 'The same Idempotency-Key came with other content' },
  VIN_INVALID: { status: 422, title: 'The VIN cannot be right' },
  VIN_TAKEN: { status: 409, title: 'Another vehicle carries this VIN' },
  ORDER_READ_ONLY: { status: 423, title: 'Nothing can be added to this order' },
  ENTRY_REFUSED: { status: 422, title: 'The ledger does not take this now' },
  EVIDENCE_INVALID: { status: 422, title: 'The evidence cannot be read' },
  REPORT_NOT_DUE: { status: 409, title: 'The report cannot be sealed yet' },
} as const satisfies Record<string, ErrorEntry>

export type ErrorCode = keyof typeof errors

export const errorCodes = Object.keys(errors) as ErrorCode[]

export const isErrorCode = (text: string): text is ErrorCode => Object.hasOwn(errors, text)
