import type { Cents, EstimateLine } from '../estimate.ts'
import type { WheelPosition } from '../wheels.ts'
import { extendedCents } from './cents.ts'
import type { OfferedBundle } from './offer.ts'
import { lineKindOf, type SoldItem, taxClassOf } from './sold-items.ts'

/** What an advisor adds by hand: an item of the price book, or work or a part in their own words at their own price. */
export type HandLine = {
  /** `hand.` and what tells it from the others. */
  readonly bundleKey: `hand.${string}`
  readonly kind: Exclude<SoldItem['kind'], 'tire'>
  readonly words: string
  /** Of the price book; `null`: none of its items. */
  readonly itemKey: string | null
  readonly quantityHundredths: number
  readonly unitCents: Cents
  readonly wheels: readonly WheelPosition[]
  /** For one; `null`: there is none. */
  readonly depositCents: Cents | null
  /** The old part stays here, so its deposit is given back at once. */
  readonly oldPartIsHere: boolean
}

/**
 * A line that was added by hand, as a decision of its own: the customer says Yes or No to it alone. It brings no step of
 * ours. A deposit is a line of its own, and what was given back of it another.
 *
 * @units Cents; quantities in hundredths.
 * @source This program's own rule; a deposit for an old part is common practice, no source, and is not taxed here.
 */
export const handBundle = (line: HandLine): OfferedBundle => ({
  bundleKey: line.bundleKey,
  title: line.kind === 'outside' ? 'outside-work' : 'by-hand',
  findings: [],
  safety: false,
  cautions: [],
  alternativeTo: null,
  works: [],
  lines: [
    {
      ...shared(line),
      lineKey: 'item',
      kind: lineKindOf[line.kind],
      code: null,
      words: line.words,
      priceCode: line.itemKey === null ? 'by-hand' : `item.${line.itemKey}`,
      unitCents: line.unitCents,
      amountCents: extendedCents(line.quantityHundredths, line.unitCents),
      taxClass: taxClassOf[line.kind],
    },
    ...(line.depositCents === null
      ? []
      : [
          depositLine(line, 'deposit', line.depositCents),
          ...(line.oldPartIsHere ? [depositLine(line, 'deposit-returned', -line.depositCents)] : []),
        ]),
  ],
})

const shared = ({ wheels, quantityHundredths }: HandLine) => ({
  wheels: [...wheels],
  sensor: null,
  quantityHundredths,
})

const depositLine = (
  line: HandLine,
  code: 'deposit' | 'deposit-returned',
  unitCents: Cents,
): EstimateLine => ({
  ...shared(line),
  lineKey: code,
  kind: 'deposit',
  code,
  words: null,
  priceCode: 'deposit',
  unitCents,
  amountCents: extendedCents(line.quantityHundredths, unitCents),
  taxClass: 'none',
})
