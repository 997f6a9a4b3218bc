import type { MoneySides } from '@bayledger/ledger/questions/money'
import type { Written } from '@bayledger/ledger/state'
import type { Picture } from '../content.ts'
import { momentWords } from './figures.ts'
import type { Spoken } from './spoken.ts'

/** Whether an authority, named by its host, has stamped the seal with the time, or could not be had. */
export type ReportStamp = { readonly is: 'within' | 'missing'; readonly authority: string }

/** What the ledger does not hold: names and words kept apart from the chain, and the shop's own particulars. */
export type ReportContext = Spoken & {
  readonly reportNumber: string
  /** UTC instant with milliseconds and Z. */
  readonly composedAt: string
  readonly timeZone: string
  readonly checkAddress: string
  /** The fingerprint of the key that seals, 64 hexadecimal digits; `null` where the paper is drawn without being sealed. */
  readonly sealKey: string | null
  /** The time-stamp in the seal; `null` where no authority is set. */
  readonly stamp: ReportStamp | null
  readonly templateVersion: number
  readonly supersedes: string | null
  readonly shop: {
    readonly name: string
    readonly lines: readonly string[]
    /** In international form, `+15555550100`; printed, because a report may say to call. */
    readonly telephone: string | null
    /** What the shop adds in its own words: to the cautions, and at the end. */
    readonly says?: { readonly cautions: string | null; readonly reportFooter: string | null }
  }
  readonly vehicle: {
    readonly description: string
    readonly plate: string | null
    /** The last six characters; the report never prints a whole VIN. */
    readonly vinLastSix: string | null
  }
  readonly customerName: string | null
  /** Personal texts by their digest in the ledger; an erased one is absent. */
  readonly texts: Readonly<Record<string, string>>
  /** Names of staff by id. */
  readonly staff: Readonly<Record<string, string>>
  /** The money of the order; what was erased is absent and reads so, never as nothing. */
  readonly money: MoneySides
  /** Digests of the photos whose bytes have arrived. */
  readonly photosReceived: ReadonlySet<string>
  /** Copies of photos for paper, by the digest of the photo. */
  readonly pictures: ReadonlyMap<string, Picture['jpeg']>
}

/** The text behind a digest, or words that say it is no longer there. */
export const personalText = (context: ReportContext, digest: string): string =>
  context.texts[digest] ?? context.language.report.cells.erased

/** More than this between a device's clock and the server's, and paper shows both. */
const clocksAgreeMs = 2 * 60_000

type Times = Pick<Written, 'writtenAt' | 'receivedAt'>

/** Whether a device's clock and the server's differ by more than two minutes at an entry. */
export const clocksDiffer = ({ writtenAt, receivedAt }: Times): boolean =>
  receivedAt !== null && Math.abs(Date.parse(receivedAt) - Date.parse(writtenAt)) > clocksAgreeMs

/** When an entry was written, by its device's clock; with the server's time of receipt where the two differ. */
export const writtenMoment = (context: ReportContext, times: Times): string => {
  const { writtenAt, receivedAt } = times
  const written = moment(context, writtenAt)
  return receivedAt !== null && clocksDiffer(times)
    ? context.language.report.cells.twoClocks(written, moment(context, receivedAt))
    : written
}

/** An instant by the shop's clock, with its day. */
export const moment = (context: ReportContext, instant: string): string =>
  momentWords(context, instant, context.timeZone)
