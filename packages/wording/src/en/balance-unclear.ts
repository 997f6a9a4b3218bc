import type { RefusalValues } from '@bayledger/ledger/admit/refusal-values'
import { gramsFromOunces } from '@bayledger/reckoning/wheel/imbalance'

/** "10 g (0.35 oz)" */
const usualLimit = (grams: number): string => `${grams} g (${(grams / gramsFromOunces(1)).toFixed(2)} oz)`

export const balanceUnclear = (doubt: RefusalValues['BALANCE_UNCLEAR']): string => {
  switch (doubt.why) {
    case 'in-words':
      return 'What is left after balancing is recorded as the machine shows it: each side in ounces or grams. Record it again.'
    case 'impossible':
      return `${doubt.found} ${doubt.unit} on the ${doubt.side} side is more than a balancer shows: at most ${doubt.most} ${doubt.unit}. Read the machine again.`
    case 'over':
      return `${doubt.found} ${doubt.unit} on the ${doubt.side} side is over the ${usualLimit(doubt.limitGrams)} that a side may usually have. Balance the wheel again. If it stays over it, record that it was balanced again; the vehicle maker’s own limit governs.`
  }
}
