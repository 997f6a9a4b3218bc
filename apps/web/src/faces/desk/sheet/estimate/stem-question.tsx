import { ifStemBreaks } from '@bayledger/reckoning/money/if-stem-breaks'
import type { OfferedBundle } from '@bayledger/reckoning/money/offer'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { Button } from '../../../../ui/button.tsx'

type StemQuestionProps = {
  prices: PriceList
  sheet: SpecificationSheet
  kept: readonly OfferedBundle[]
  onAdd: (bundle: OfferedBundle) => void
}

/** Asks the customer now what to do if a stem breaks; shown while a metal stem is to be loosened and nobody was asked. */
export function StemQuestion({ prices, sheet, kept, onAdd }: StemQuestionProps) {
  const question = ifStemBreaks(prices, sheet, kept)
  if (question === null || kept.some(({ bundleKey }) => bundleKey === question.bundleKey)) return null
  return (
    <div className="stack">
      <p>A metal stem is loosened here. If it is corroded, it can break, and its sensor with it.</p>
      <Button onClick={() => onAdd(question)}>Ask the customer now what to do then</Button>
    </div>
  )
}
