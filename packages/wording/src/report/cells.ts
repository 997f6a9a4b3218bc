import type { Author } from '@bayledger/ledger/entry'

/** What several sections of a report print in a cell or in the middle of a sentence. */
export type ReportCellsWording = {
  readonly notChecked: string
  readonly notRecorded: string
  readonly couldNotBeChecked: string
  readonly notNumbered: string
  /** In place of a personal text or a sum that was erased by request. */
  readonly erased: string
  readonly noneExpected: string
  readonly noneSeen: string
  readonly silent: (tries: number) => string
  /** `written` and `received`: moments, of which the device's clock and the server's tell different ones. */
  readonly twoClocks: (written: string, received: string) => string
  /** An author whose name is not on file; the customer's name may have been erased. */
  readonly authors: Readonly<Record<Author['kind'], string>>
  /** "; it took 3 min by the tablet’s clock". `what`: what was timed; `slept`: the tablet slept or was started anew. */
  readonly took: (what: 'relearn' | 'light', duration: string, slept: boolean) => string
}
