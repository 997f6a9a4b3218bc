import { type SpecificationSheet, tiresOf } from '@bayledger/reckoning/sheet'
import { overallDiameter } from '@bayledger/reckoning/tire/geometry'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { type BalancedFor, gramsFromOunces, imbalance } from '@bayledger/reckoning/wheel/imbalance'
import { useState } from 'react'
import { ChoiceGroup } from '../../../../ui/choice-group.tsx'
import { NumberField } from '../../../../ui/number-field.tsx'
import type { TypedFigure } from '../../../../ui/number-text.ts'
import { FoldedCheck } from './folded-check.tsx'
import { imbalanceWords } from './wheel-check-words.ts'

const kinds = [
  { value: 'car', label: 'Car' },
  { value: 'fast-car', label: 'Fast car' },
  { value: 'light-truck', label: 'Light truck or van' },
] as const satisfies readonly { value: BalancedFor; label: string }[]

/** What the balancer shows as left, against what may be left, and what it does on the road. */
export function BalanceCheck({ sheet }: { sheet: SpecificationSheet }) {
  const [on, setOn] = useState<BalancedFor | null>(null)
  const [inner, setInner] = useState<TypedFigure>(null)
  const [outer, setOuter] = useState<TypedFigure>(null)
  const size = readTireSize(tiresOf(sheet)?.front.size ?? '')
  if (!size.ok || size.value.kind === 'heightless')
    return <p>The sheet names no tire with a diameter yet: what is left after balancing cannot be judged.</p>
  const tire = size.value
  const says =
    on === null || !isWeight(inner) || !isWeight(outer)
      ? null
      : imbalanceWords(
          imbalance({
            grams: { inner: gramsFromOunces(inner), outer: gramsFromOunces(outer) },
            rimInches: tire.rimInches,
            tireDiameter: overallDiameter(tire),
            milesPerHour: 60,
            on,
          }),
          on,
        )
  return (
    <FoldedCheck
      summary="Judge what is left after balancing"
      verdictName="What is left after balancing"
      says={says}
      toEnter="Enter both sides as the balancer shows them without rounding."
    >
      <ChoiceGroup label="Balanced for" options={kinds} value={on} onChange={setOn} />
      <div className="row">
        <NumberField label="Left on the inner side" unit="oz" value={inner} onChange={setInner} />
        <NumberField label="Left on the outer side" unit="oz" value={outer} onChange={setOuter} />
      </div>
    </FoldedCheck>
  )
}

const isWeight = (typed: TypedFigure): typed is number => typeof typed === 'number' && typed >= 0
