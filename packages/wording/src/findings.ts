import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'

/** A finding's name as people read it, with a capital to begin a line: `tire-low` is "Tire low". */
export type FindingTitles = Readonly<Record<FindingCode, string>>
