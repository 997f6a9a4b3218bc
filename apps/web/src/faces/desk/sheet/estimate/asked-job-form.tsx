import type { OrderState } from '@bayledger/ledger/state'
import { askedBundle } from '@bayledger/reckoning/money/asked-bundles'
import { type AskedJob, type AskedKind, askedKinds, patternsFor } from '@bayledger/reckoning/money/asked-jobs'
import type { OfferedBundle } from '@bayledger/reckoning/money/offer'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import type { RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import {
  type RoadPosition,
  readingOrder,
  roadPositions,
  type WheelPosition,
} from '@bayledger/reckoning/wheels'
import { english } from '@bayledger/wording/en/english'
import { useState } from 'react'
import { RotationDrawing } from '../../../../features/plan/rotation-drawing.tsx'
import { Button } from '../../../../ui/button.tsx'
import { CheckGroup } from '../../../../ui/choice-group.tsx'
import { SelectField } from '../../../../ui/select-field.tsx'
import { useFirstList } from './use-first-list.ts'

const kindWords: Readonly<Record<AskedKind, string>> = {
  rotation: 'Rotation',
  tires: 'New tires, sensors kept',
  season: 'The other season’s wheels',
  sensors: 'New sensors',
  stems: 'New valve stems',
  spare: 'Spare wheel',
  pressures: 'Pressures only',
  'torque-again': 'Torque check after some miles',
  relearn: 'Relearn',
  reset: 'Reset',
}

type AskedJobFormProps = {
  state: OrderState
  prices: PriceList
  sheet: SpecificationSheet
  taken: readonly OfferedBundle[]
  /** Wheels whose tire is open for work that was agreed on before. */
  opened: readonly WheelPosition[]
  onAdd: (bundle: OfferedBundle) => void
}

/** A job that the customer asks for, whatever was found. */
export function AskedJobForm({ state, prices, sheet, taken, opened, onAdd }: AskedJobFormProps) {
  const { form, toFirst } = useFirstList()
  const [kind, setKind] = useState<AskedKind | null>(null)
  const [wheels, setWheels] = useState<readonly WheelPosition[]>(roadPositions)
  const patterns = patternsFor(sheet)
  const [pattern, setPattern] = useState<RotationPattern | null>(null)
  const tires = (prices.items ?? []).filter((item) => item.kind === 'tire')
  const [tireKey, setTireKey] = useState<string | null>(prices.prices.tire === undefined ? null : '')
  const places = kind === 'torque-again' || sheet.spare === 'none' ? roadPositions : readingOrder
  const job = ((): AskedJob | null => {
    switch (kind) {
      case null:
        return null
      case 'rotation':
        return pattern === null ? null : { kind, pattern }
      case 'tires':
        return tireKey === null || wheels.length === 0
          ? null
          : { kind, wheels, tire: tires.find(({ key }) => key === tireKey) ?? null }
      case 'stems':
      case 'sensors':
        return wheels.length === 0 ? null : { kind, wheels }
      case 'torque-again': {
        const road = wheels.filter((wheel): wheel is RoadPosition => wheel !== 'SP')
        return road.length === 0 ? null : { kind, wheels: road }
      }
      default:
        return { kind }
    }
  })()
  const bundle = job && askedBundle(job, prices, sheet, opened)
  const twice = bundle !== null && taken.some((other) => holdsTwice(other, bundle))
  const takesWheels = kind === 'tires' || kind === 'stems' || kind === 'sensors' || kind === 'torque-again'
  return (
    <div ref={form} className="stack">
      <SelectField
        label="Job that the customer asks for"
        options={askedKinds(prices, sheet).map((value) => ({ value, label: kindWords[value] }))}
        value={kind}
        onChange={setKind}
      />
      {kind === 'rotation' ? (
        <SelectField
          label="Pattern"
          hint="The vehicle maker’s pattern governs."
          options={patterns.map((value) => ({ value, label: english.steps.patterns[value] }))}
          value={pattern}
          onChange={setPattern}
        />
      ) : null}
      {kind === 'rotation' && pattern !== null ? <RotationDrawing state={state} pattern={pattern} /> : null}
      {kind === 'tires' ? (
        <SelectField
          label="Tire"
          hint="Check below whether it may replace the tire of the sheet."
          options={[
            ...(prices.prices.tire === undefined ? [] : [{ value: '', label: 'in the size of the sheet' }]),
            ...tires.map(({ key, words, size }) => ({ value: key, label: `${words} · ${size}` })),
          ]}
          value={tireKey}
          onChange={setTireKey}
        />
      ) : null}
      {takesWheels ? (
        <CheckGroup
          label="Wheels"
          options={places.map((value) => ({ value, label: english.wheels.names[value] }))}
          values={wheels.filter((wheel) => (places as readonly WheelPosition[]).includes(wheel))}
          onChange={setWheels}
        />
      ) : null}
      {kind === null ? null : (
        <Button
          whyNot={
            bundle === null
              ? 'Choose what is missing above.'
              : twice
                ? 'This work is on the estimate already.'
                : undefined
          }
          onClick={() => {
            if (bundle !== null) onAdd(bundle)
            setKind(null)
            toFirst()
          }}
        >
          Add this job
        </Button>
      )}
    </div>
  )
}

/** Whether two bundles hold the same work on the same wheel, or both move the wheels. Pressures and learning are shared. */
const holdsTwice = (one: OfferedBundle, other: OfferedBundle): boolean =>
  one.bundleKey === other.bundleKey ||
  one.works.some((work) =>
    other.works.some((same) =>
      'wheel' in work
        ? 'wheel' in same && same.kind === work.kind && same.wheel === work.wheel
        : moves.has(work.kind) && moves.has(same.kind),
    ),
  )

const moves: ReadonlySet<string> = new Set(['rotate', 'swap-wheels'])
