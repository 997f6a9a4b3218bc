import type { CustomerLanguageCode } from '@bayledger/ledger/customer-language-code'

/** What became of one try. `later`: nothing is wrong with the message, so that it is tried again. */
export type Outcome = {
  readonly became: 'handed-over' | 'refused' | 'bounced' | 'later'
  /** What the other side said. */
  readonly words: string
}

/** A message as it goes out by e-mail. */
export type Letter = {
  /** The same at every try, so that whoever gets it twice can tell. */
  readonly id: string
  readonly createdAt: Date
  readonly from: string
  readonly to: { readonly name: string; readonly address: string }
  readonly language: CustomerLanguageCode
  readonly subject: string
  readonly text: string
  /** The address that ends such messages in one click. */
  readonly stop: string
  readonly attachment: { readonly fileName: string; readonly bytes: Uint8Array } | null
}

/** A message to a telephone. */
export type TextMessage = {
  readonly id: string
  readonly createdAt: Date
  readonly to: string
  readonly text: string
}

/** The ways out of the shop that are set; `null` where one is not. */
export type Carriers = {
  readonly email: ((letter: Letter) => Promise<Outcome>) | null
  readonly text: ((message: TextMessage) => Promise<Outcome>) | null
}

/** A shop from which nothing goes out. */
export const noCarriers: Carriers = { email: null, text: null }
