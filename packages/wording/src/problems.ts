import type { DeliveryRefusal, Refusal } from '@bayledger/ledger/admit/refusal'
import type { GateReason } from '@bayledger/ledger/questions/gate-reason'
import type { Role } from '@bayledger/ledger/role'
import type { Doubt } from '@bayledger/ledger/sound-entries'
import type { Refusal as RefusedText } from '@bayledger/reckoning/reading'
import type { VinFault } from '@bayledger/reckoning/vehicle/vin'

type Nothing = Readonly<Record<never, never>>

/** What a failed call is about, beside its code. */
export type ProblemValues = {
  REQUEST_UNREADABLE: Nothing
  /** The limit in megabytes, where one limit applies. */
  REQUEST_TOO_LARGE: { readonly limitMegabytes?: number }
  REQUEST_NOT_JSON: Nothing
  FIELDS_INVALID:
    | { readonly what: 'fields'; readonly fields: readonly string[] }
    | { readonly what: 'cursor' | 'if-match' | 'idempotency-key' | 'location' | 'sides' | 'values' }
    | { readonly what: 'shop-not-named' | 'shop-unknown' }
  ROUTE_NOT_FOUND: { readonly method: string; readonly path: string }
  TOO_MANY_REQUESTS: { readonly seconds: number }
  SERVICE_UNAVAILABLE: Nothing
  INTERNAL_FAULT: { readonly requestId: string }
  REQUEST_FROM_ELSEWHERE: Nothing
  SESSION_MISSING: { readonly signInBy: 'password' | 'pin' }
  SESSION_EXPIRED: Nothing
  SIGN_IN_REFUSED: Nothing
  PIN_REFUSED: Nothing
  SIGN_IN_BLOCKED: { readonly seconds: number }
  SECOND_PERSON_REFUSED:
    | { readonly why: 'is-the-writer' | 'figure-not-agreed' }
    | { readonly why: 'lacks-the-role'; readonly roles: readonly Role[] }
  DEVICE_UNKNOWN: Nothing
  ENROLLMENT_CODE_REFUSED: { readonly minutes: number }
  ACCESS_REFUSED: { readonly needs: 'desk' | readonly Role[] }
  LINK_REFUSED: Nothing
  CUSTOMER_NOT_FOUND: Nothing
  VEHICLE_NOT_FOUND: Nothing
  SHEET_NOT_FOUND: Nothing
  ORDER_NOT_FOUND: Nothing
  ORDER_WITHHELD: Nothing
  REPORT_NOT_FOUND: Nothing
  LINK_NOT_FOUND: Nothing
  REFUSED_ENTRY_NOT_FOUND: Nothing
  VERSION_MISSING: Nothing
  VERSION_STALE: { readonly what: 'customer' | 'vehicle' | 'sheet' | 'order' }
  IDEMPOTENCY_KEY_MISSING: Nothing
  IDEMPOTENCY_KEY_REUSED: Nothing
  VIN_INVALID: RefusedText<VinFault>
  VIN_TAKEN: Nothing
  ORDER_READ_ONLY: { readonly doubt: Doubt }
  ENTRY_REFUSED:
    | { readonly why: 'ledger'; readonly refusal: Refusal | DeliveryRefusal }
    | { readonly why: 'estimate-changed' | 'answered-before' | 'known-before' }
  EVIDENCE_INVALID: { readonly count: number }
  REPORT_NOT_DUE:
    | { readonly why: 'gate'; readonly gate: GateReason }
    | { readonly why: 'order-is-written-to' }
}

export type ProblemCode = keyof ProblemValues

/** A failed call: its code and what it is about. */
export type SaidProblem = {
  [Code in ProblemCode]: { readonly code: Code } & ProblemValues[Code]
}[ProblemCode]

/** For each failed call what is wrong (`title`), and in this case what is allowed and what to do (`detail`). */
export type ProblemsWording = {
  readonly [Code in ProblemCode]: {
    readonly title: string
    readonly detail: (values: ProblemValues[Code]) => string
  }
}

export const problemDetail = (words: ProblemsWording, problem: SaidProblem): string => {
  // Each code's function takes the values of that code, which is what the union holds.
  const { detail } = words[problem.code] as { readonly detail: (values: SaidProblem) => string }
  return detail(problem)
}
