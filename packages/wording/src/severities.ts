import type { FindingSeverity } from '@bayledger/ledger/questions/severity'

/** Grades besides those of findings: two facts that exclude each other, what could not be checked, what is good. */
export type BesideFindings = 'contradiction' | 'could-not-be-checked' | 'good-as-measured'

/** The word that is always printed next to the shape of a finding. */
export type SeveritiesWording = Readonly<Record<FindingSeverity | BesideFindings, string>>
