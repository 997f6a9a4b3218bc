import type { DeliveryRefusal, Refusal } from '@bayledger/ledger/admit/refusal'
import type { PasswordFault, PinFault } from '@bayledger/ledger/proof-of-person'
import type { GateReason } from '@bayledger/ledger/questions/gate-reason'
import type { Role } from '@bayledger/ledger/role'
import type { Doubt } from '@bayledger/ledger/sound-entries'
import type { Refusal as RefusedText } from '@bayledger/reckoning/reading'
import type { VinFault } from '@bayledger/reckoning/vehicle/vin'

/** What an owner keeps of a shop, one record each, with the history of who changed what. */
export type RecordSubject =
  | 'person'
  | 'place'
  | 'instrument'
  | 'tablet'
  | 'stock-item'
  | 'price-book'
  | 'own-data'

type Nothing = Readonly<Record<never, never>>

/** What a failed call is about, beside its code. */
export type ProblemValues = {
  REQUEST_UNREADABLE: Nothing
  ADDRESS_UNREADABLE: Nothing
  ADDRESS_TOO_LONG: Nothing
  HEADERS_TOO_LARGE: Nothing
  REQUEST_TOO_SLOW: Nothing
  /** The limit in megabytes, where one limit applies. */
  REQUEST_TOO_LARGE: { readonly limitMegabytes?: number }
  REQUEST_NOT_JSON: Nothing
  REQUEST_COMPRESSED: Nothing
  FIELDS_INVALID:
    | { readonly what: 'fields'; readonly fields: readonly string[] }
    | { readonly what: 'cursor' | 'if-match' | 'idempotency-key' | 'location' | 'sides' | 'values' }
    | { readonly what: 'shop-not-named' | 'shop-unknown' }
  ROUTE_NOT_FOUND: { readonly method: string; readonly path: string }
  TOO_MANY_REQUESTS: { readonly seconds: number }
  /** `disk-full`: the database has no room left. `too-slow`: one of its statements was given up. `signing-key`: nothing can be sealed. Left out: the database does not answer. */
  SERVICE_UNAVAILABLE: { readonly why?: 'disk-full' | 'too-slow' | 'signing-key' }
  INTERNAL_FAULT: { readonly requestId: string }
  REQUEST_FROM_ELSEWHERE: Nothing
  HOST_UNKNOWN: { readonly host: string }
  SESSION_MISSING: { readonly signInBy: 'password' | 'pin' }
  SESSION_EXPIRED: Nothing
  /** `left`: name and secret are right, and the person does not work here any more. `first-over`: the password was given by somebody else, too long ago. `passkey-needed`: they have a second step, and it is a passkey. */
  SIGN_IN_REFUSED: { readonly why?: 'left' | 'first-over' | 'passkey-needed' }
  PIN_REFUSED: { readonly why?: 'left' }
  PASSWORD_REFUSED: Nothing
  SIGN_IN_BLOCKED: { readonly seconds: number }
  SIGN_IN_UNFINISHED: { readonly awaits: 'password' | 'second-step' }
  SECOND_STEP_NEEDED: Nothing
  SECOND_STEP_REFUSED: Nothing
  OWNER_CODE_REFUSED: Nothing
  PASSKEY_REFUSED: {
    readonly why: 'unknown' | 'too-late' | 'does-not-fit' | 'went-back' | 'kept-before' | 'too-many'
  }
  /** `address`: where the desk is open now; `other`: where it would have to be. */
  PASSKEY_NEEDS_NAME: { readonly address: string; readonly other: string }
  SECOND_PERSON_REFUSED:
    | { readonly why: 'is-the-writer' | 'figure-not-agreed' }
    | { readonly why: 'lacks-the-role'; readonly roles: readonly Role[] }
  DEVICE_UNKNOWN: Nothing
  DEVICE_KEY_TAKEN: Nothing
  SEALED_PARCEL_NOT_TAKEN: Nothing
  SEALED_PHOTO_NOT_TAKEN: Nothing
  SIGNATURE_REFUSED: { readonly why: 'no-key' | 'differs' }
  ENROLLMENT_CODE_REFUSED: { readonly minutes: number }
  ACCESS_REFUSED: { readonly needs: 'desk' | readonly Role[] }
  PROOF_NEEDED: Nothing
  LINK_REFUSED: Nothing
  /** Where the page opens, as an address of the machine itself. */
  FIRST_PAGE_ELSEWHERE: { readonly address: string }
  SHOP_MADE_BEFORE: Nothing
  PIN_UNSUITABLE: { readonly why: PinFault | 'as-before' }
  PASSWORD_UNSUITABLE: { readonly why: PasswordFault | 'as-before' }
  SIGN_IN_NAME_TAKEN: Nothing
  LAST_OWNER: Nothing
  CUSTOMER_NOT_FOUND: Nothing
  VEHICLE_NOT_FOUND: Nothing
  SHEET_NOT_FOUND: Nothing
  ORDER_NOT_FOUND: Nothing
  ORDER_WITHHELD: Nothing
  REPORT_NOT_FOUND: Nothing
  PHOTO_NOT_FOUND: Nothing
  /** Bytes; `wanted` is `null` where the photo has no such piece. */
  PHOTO_PIECE_WRONG: { readonly wanted: number | null; readonly sent: number }
  PHOTO_DAMAGED: Nothing
  PHOTO_UNREADABLE: Nothing
  /** `line` and `row` count from 1; `columns` are named as in the file. */
  CSV_UNREADABLE:
    | { readonly why: 'empty' | 'utf-16' }
    | { readonly why: 'not-utf-8'; readonly line: number }
    | { readonly why: 'quotation-marks'; readonly row: number }
    | { readonly why: 'too-many-rows'; readonly most: number }
    | {
        readonly why: 'columns'
        readonly missing: readonly string[]
        readonly unknown: readonly string[]
        readonly twice: readonly string[]
      }
  FIGURE_VERIFIED: Nothing
  CSV_PREVIEW_STALE: Nothing
  CSV_ROWS_REFUSED: { readonly count: number }
  LINK_NOT_FOUND: Nothing
  MESSAGE_NOT_WAITING: Nothing
  MESSAGE_NOT_SENT: {
    readonly why:
      | 'no-mail-server'
      | 'no-text-folder'
      | 'no-address'
      | 'no-number'
      | 'not-agreed'
      | 'no-estimate'
      | 'no-report'
  }
  REFUSED_ENTRY_NOT_FOUND: Nothing
  RECORD_NOT_FOUND: { readonly what: RecordSubject }
  VERSION_MISSING: Nothing
  VERSION_STALE: {
    readonly what: 'customer' | 'vehicle' | 'sheet' | 'order' | 'setting' | RecordSubject
  }
  /** `into`: the name or plate of the record that holds now. */
  RECORD_MERGED: { readonly what: 'customer' | 'vehicle'; readonly into: string }
  MERGE_REFUSED: {
    readonly why: 'same-record' | 'newer-merge' | 'undone-before'
    readonly what: 'customer' | 'vehicle'
  }
  MERGE_NOT_FOUND: Nothing
  /** Orders by their numbers; `null`: the customer themselves. */
  ERASURE_REFUSED: {
    readonly obstacles: readonly (
      | { readonly why: 'held'; readonly order: string | null }
      | { readonly why: 'open' | 'owed'; readonly order: string }
      | { readonly why: 'on-tablet'; readonly order: string; readonly tablet: string }
    )[]
  }
  CUSTOMER_ERASED: Nothing
  HOLD_NOT_FOUND: Nothing
  HOLD_NOT_CHANGED: { readonly why: 'held-before' | 'lifted-before' }
  /** Figures that may be right and are likely not: the fields that the writer is asked about. */
  VALUE_DOUBTFUL: { readonly fields: readonly string[] }
  IDEMPOTENCY_KEY_MISSING: Nothing
  IDEMPOTENCY_KEY_REUSED: Nothing
  VIN_INVALID: RefusedText<VinFault>
  VIN_TAKEN: Nothing
  ORDER_READ_ONLY: { readonly doubt: Doubt }
  ENTRY_REFUSED:
    | { readonly why: 'ledger'; readonly refusal: Refusal | DeliveryRefusal }
    | { readonly why: 'estimate-changed' | 'answered-before' | 'known-before' | 'another-name' }
  EVIDENCE_INVALID: { readonly count: number }
  REPORT_NOT_DUE:
    | { readonly why: 'gate'; readonly gate: GateReason }
    | { readonly why: 'order-is-written-to' }
    | { readonly why: 'says-the-same'; readonly number: string }
  /** Pieces of a part. */
  STOCK_NOT_MOVED:
    | { readonly why: 'moved-since'; readonly listed: number; readonly now: number }
    | { readonly why: 'not-enough'; readonly onHand: number; readonly asked: number }
    | { readonly why: 'more-than-sent'; readonly sent: number; readonly asked: number }
    | { readonly why: 'more-cores-than-owed'; readonly owed: number; readonly asked: number }
    | { readonly why: 'same-place' | 'arrived-before' | 'missing-not-explained' | 'no-such-transfer' }
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
