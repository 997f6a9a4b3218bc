import type { StampFault } from '@bayledger/report/stamp/judge-stamp'
import type { Answered } from './ask-authority.ts'

/** Why bytes were not stamped. */
export type StampTrouble =
  | Exclude<Answered, { is: 'answer' }>
  | { readonly is: 'refused'; readonly said: string }
  | { readonly is: 'another-nonce' | 'token-too-large' | 'unknown-authority' | StampFault }
  | { readonly is: 'another-time'; readonly theirs: string; readonly ours: string }
