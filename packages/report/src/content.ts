import type { FindingSeverity } from '@bayledger/ledger/questions/severity'
import type { DriveVerdict } from '@bayledger/ledger/questions/verdicts'
import type { LanguageCode } from '@bayledger/wording/language'
import type { BesideFindings } from '@bayledger/wording/severities'
/**
 * Everything a report says, as plain values already in words and figures: composing it reads the ledger,
 * laying it out reads nothing else. Two equal contents give the same bytes before sealing.
 */
export type ReportContent = {
  readonly language: LanguageCode
  readonly reportNumber: string
  readonly orderNumber: string
  /** The ledger entry that the report was composed up to. */
  readonly head: { readonly seq: number; readonly hash: string }
  /** UTC instant with milliseconds and Z; the document's own date. */
  readonly composedAt: string
  /** The same instant as the shop's clock shows it. */
  readonly composedAtWords: string
  readonly timeZone: string
  /** Where anyone can have the file checked; also drawn as a QR code. */
  readonly checkAddress: string
  readonly templateVersion: number
  readonly supersedes: string | null
  readonly pageOne: PageOne
  readonly sections: readonly Section[]
}

/** What grades a line: a finding's own weight, or what is listed beside findings. Its word is always printed with it. */
export type Severity = FindingSeverity | BesideFindings

/** A number with its unit. */
export type Figure = { readonly kind: 'figure'; readonly value: string; readonly unit: string }

/** What one cell or line holds; an absent fact is a gap that says so, never blank. */
export type Cell =
  | Figure
  | { readonly kind: 'words'; readonly text: string }
  /** Plates, VINs and sensor IDs, in the typeface that distinguishes O from 0. */
  | { readonly kind: 'id'; readonly text: string }
  | { readonly kind: 'gap'; readonly text: string }
  | { readonly kind: 'good'; readonly text: string }

export type PageOne = {
  readonly canDrive: { readonly answer: DriveVerdict; readonly words: string }
  readonly shop: { readonly name: string; readonly lines: readonly string[] }
  readonly facts: readonly { readonly label: string; readonly value: Cell }[]
  readonly told: { readonly text: Cell; readonly entry: number | null }
  /** Dangers first, then the warning light, then what was left low: each is a thing of its own and reads as one. */
  readonly found: readonly FoundPart[]
  readonly did: readonly string[]
  readonly notDone: readonly { readonly title: string; readonly answer: string }[]
  readonly fixed: { readonly word: string; readonly words: string }
  readonly wheels: readonly WheelLine[]
  readonly next: readonly string[]
  readonly signatures: readonly { readonly label: string; readonly name: string | null }[]
  /** What a signature means. */
  readonly signing: string
  /** What the QR code opens, and what can be checked there. */
  readonly check: string
}

/** One thing that was found: its word, its sentence, the number that proves it, and what was or can be done about it. */
export type FoundPart = {
  readonly severity: Severity
  readonly word: string
  readonly sentence: string
  readonly proof: { readonly figure: Figure; readonly says: string } | null
  readonly remedy: readonly string[]
  readonly entry: number | null
}

/** One wheel before and after, against the door label. */
export type WheelLine = {
  readonly position: 'LF' | 'RF' | 'RR' | 'LR' | 'SP'
  readonly name: string
  /** Set where the primary cause or a stop names this wheel: drawn by its shape, with this word. */
  readonly marked: { readonly severity: Severity; readonly word: string } | null
  readonly before: Cell
  readonly after: Cell
  readonly label: Cell
  readonly sensorBefore: Cell
  readonly sensorAfter: Cell
}

export type Section = { readonly title: string; readonly blocks: readonly Block[] }

export type Block =
  | { readonly kind: 'paragraph'; readonly text: string; readonly entry: number | null }
  | { readonly kind: 'findings'; readonly findings: readonly FindingLine[] }
  | { readonly kind: 'pictures'; readonly pictures: readonly Picture[] }
  | {
      readonly kind: 'table'
      readonly caption: string
      readonly columns: readonly Column[]
      readonly rows: readonly Row[]
    }

/** A photo; `alt` is for whoever does not see it. */
export type Picture = {
  readonly alt: string
  readonly caption: string
  /** Width and height in pixels. */
  readonly jpeg: { readonly bytes: Uint8Array; readonly width: number; readonly height: number }
}

export type FindingLine = {
  readonly severity: Severity
  readonly sentence: string
  readonly reasons: readonly string[]
}

/** `share` is the column's part of the table's width, in any unit. */
export type Column = { readonly title: string; readonly share: number }

/** One line of a table: its first cell names the line; `entry` is the ledger entry it comes from. */
export type Row = { readonly entry: number | null; readonly cells: readonly Cell[] }
