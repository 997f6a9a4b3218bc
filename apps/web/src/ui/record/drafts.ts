import type { RowValues } from '../rows/rows.ts'

/** What somebody has typed over a version and not saved yet. It outlives a change of the page, never a reload: it may hold a PIN. */
export type RecordDraft = {
  /** The version that was read before the first key; 0 for a new record. */
  readonly version: number
  readonly values: RowValues
  /** Fields that the person was asked about and said are right. */
  readonly sure: readonly string[]
}

const drafts = new Map<string, RecordDraft>()
/** A key for each content that was sent to be added: sent again unchanged, it is the same request. */
const keys = new Map<string, string>()

export const draftOf = (key: string): RecordDraft | null => drafts.get(key) ?? null

export const keepDraft = (key: string, draft: RecordDraft): void => void drafts.set(key, draft)

export const dropDraft = (key: string): void => void drafts.delete(key)

/** The idempotency key of adding this content. */
export const keyOf = (content: unknown): string => {
  const text = JSON.stringify(content)
  const key = keys.get(text) ?? crypto.randomUUID()
  keys.set(text, key)
  return key
}

/** After what was added is there, the same content typed again is another record. */
export const forgetKey = (content: unknown): void => void keys.delete(JSON.stringify(content))
