import type { Agreement } from './agreement.ts'
import { canonicalText, digestOf } from './digests.ts'
import type { DraftEnvelope } from './entry.ts'

/** Whose entries a tablet hands in. */
export type SignedParcel = {
  readonly deviceId: string
  readonly staffId: string
  readonly entries: readonly DraftEnvelope[]
}

/** The text that a tablet signs to hand in entries as written on it by this person. Sides are named by the entries. */
export const parcelText = ({ deviceId, staffId, entries }: SignedParcel): string =>
  canonicalText({ signs: 'parcel', deviceId, staffId, digest: digestOf(entries) })

/** The text that a tablet signs to hand in a photo, by its digest, that was taken on it. */
export const photoText = (photo: { readonly deviceId: string; readonly digest: string }): string =>
  canonicalText({ signs: 'photo', ...photo })

/** The text that a tablet signs once a second person's PIN was right on it: they agree to this, and to nothing else. */
export const agreementText = (
  agreement: Agreement,
  { deviceId, staffId }: { readonly deviceId: string; readonly staffId: string },
): string => canonicalText({ signs: 'agreement', deviceId, staffId, ...agreement })

/** The text that a tablet signs to go on as a person whose PIN it checked itself. `at`: the server's time, as just heard. */
export const sessionText = (asked: {
  readonly deviceId: string
  readonly staffId: string
  readonly pinVersion: number
  readonly at: string
}): string => canonicalText({ signs: 'session', ...asked })
