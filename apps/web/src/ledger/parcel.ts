import type { SentSide } from '@bayledger/contract/entries'
import type { DraftEnvelope } from '@bayledger/ledger/entry'
import type { ProblemBody } from '../lib/problem.ts'

/** A form as it was filled in, under the key that the tablet keeps it by. */
export type FilledForm = { readonly key: string; readonly content: unknown }

/** Entries that go together, as one person wrote them. Plain values only: it survives a reboot. */
export type Parcel = {
  readonly orderId: string
  readonly entries: readonly DraftEnvelope[]
  readonly sides: readonly SentSide[]
  /** Names them to a person: "left front gauge". */
  readonly says: string
  readonly staffId: string
  readonly deviceId: string | null
  /** How many entries of the order this tablet had read when they were written: what their writer could know. */
  readonly heardSeq: number
  /** What is filled in again where the ledger does not take the entries; `null`: they came from no form. */
  readonly form: FilledForm | null
}

/** What a person reads of a refusal. */
export type RefusalText = Pick<ProblemBody, 'title' | 'detail'>

export type Refused = { readonly number: number; readonly parcel: Parcel; readonly problem: RefusalText }

/** A parcel with its place in the tablet's own order of writing: 1, 2, 3 and so on. */
export type KeptParcel = { readonly number: number; readonly parcel: Parcel }

/** Where a tablet keeps what it wrote. Each promise resolves once that would survive a power cut. */
export type ParcelStore = {
  /** Everything that is kept, in order of writing. */
  readonly load: () => Promise<{
    readonly waiting: readonly KeptParcel[]
    readonly refused: readonly Refused[]
  }>
  /** Keeps a parcel and gives its number. Parcels are numbered in the order of the calls. */
  readonly keep: (parcel: Parcel) => Promise<number>
  /** What became of a parcel: another page of this tablet may have sent it. */
  readonly statusOf: (number: number) => Promise<'waiting' | 'refused' | 'gone'>
  readonly refuse: (number: number, problem: RefusalText) => Promise<void>
  /** All of them at once: the server holds them, or a person has read why it does not. */
  readonly drop: (numbers: readonly number[]) => Promise<void>
}
