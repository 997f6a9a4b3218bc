import type { Doubt } from '@bayledger/ledger/sound-entries'

/** Why nothing can be added to an order; `tooNew` is for an entry that this server is too old to take. */
export type DoubtsWording = {
  readonly order: { readonly [Code in Doubt['code']]: (seq: number) => string }
  readonly tooNew: string
}

export const doubtWords = ({ order }: DoubtsWording, { code, seq }: Doubt): string => order[code](seq)
