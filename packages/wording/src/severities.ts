import type { FindingSeverity } from '@bayledger/ledger/questions/severity'

/** What is graded beside findings: two facts that exclude each other, what could not be checked, what is good. */
export type BesideFindings = 'contradiction' | 'could-not-be-checked' | 'good-as-measured'

/** The word that is always printed with the shape of a finding. */
export type SeveritiesWording = Readonly<Record<FindingSeverity | BesideFindings, string>>
