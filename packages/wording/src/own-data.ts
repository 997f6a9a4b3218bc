import type { AskedChannelCode, AskedPurposeCode } from './asked-codes.ts'

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
  readonly linkMade: string
  readonly linkOpened: string
  readonly brought: string
  readonly photo: (digest: string) => string
}
