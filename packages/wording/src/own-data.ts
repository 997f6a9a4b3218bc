import type { AskedChannelCode, AskedPurposeCode } from './asked-codes.ts'

/** How a message ended, or that it waits; the contract's `MessageState`. */
export type MessageStateCode =
  | 'waiting'
  | 'handed-over'
  | 'refused'
  | 'bounced'
  | 'withheld'
  | 'given-up'
  | 'withdrawn'

/** How the copy of a customer's own data names what it holds. */
export type OwnDataWording = {
  readonly customer: string
  readonly vehicle: (description: string) => string
  readonly fields: {
    readonly name: string
    readonly phone: string
    readonly email: string
    readonly language: string
    readonly mayCall: string
    readonly mayText: string
    readonly mayEmail: string
    readonly plate: string
    readonly plateRegion: string
    readonly vin: string
    readonly color: string
    readonly notes: string
  }
  readonly yes: string
  readonly no: string
  readonly agreedTo: string
  readonly purposes: Readonly<Record<AskedPurposeCode, string>>
  readonly channels: Readonly<Record<AskedChannelCode, string>>
  readonly message: string
  readonly messageState: string
  readonly messageStates: Readonly<Record<MessageStateCode, string>>
  /** What a mail server said of a message. */
  readonly serverSaid: string
  readonly linkMade: string
  readonly linkOpened: string
  readonly brought: string
  /** A write-up that was begun at the desk and not finished. */
  readonly draft: string
  readonly report: string
  readonly photo: (file: string) => string
  /** A photo whose bytes are not in the copy: they have not arrived, or the copy is full. */
  readonly photoNotHere: (digest: string) => string
}
