import type { ContradictionCode, Figures } from '@bayledger/reckoning/diagnosis/diagnosis'

/** What a contradiction says, and what to do about it. */
export type ContradictionsWording = Readonly<
  Record<ContradictionCode, (values: Figures) => { readonly says: string; readonly do: string }>
>
