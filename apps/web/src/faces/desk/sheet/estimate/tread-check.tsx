import type { OrderState } from '@bayledger/ledger/state'
import { type SpecificationSheet, tiresOf } from '@bayledger/reckoning/sheet'
import { proRata } from '@bayledger/reckoning/tire/pro-rata'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { spareSmallerBy } from '@bayledger/reckoning/tire/temporary-spare'
import type { MeasuredTireSize } from '@bayledger/reckoning/tire/tire-size'
import { type TireOnRoad, tiresApart } from '@bayledger/reckoning/tire/tread-apart'
import { axleOf, type RoadPosition, roadPositions } from '@bayledger/reckoning/wheels'
import { english } from '@bayledger/wording/en/english'
import { useState } from 'react'
import { money } from '../../../../lib/format.ts'
import { CheckGroup } from '../../../../ui/choice-group.tsx'
import { NumberField } from '../../../../ui/number-field.tsx'
import type { TypedFigure } from '../../../../ui/number-text.ts'
import { apartWords, temporarySpareWords } from './tire-check-words.ts'

type TreadCheckProps = { state: OrderState; sheet: SpecificationSheet; fitted: string }

const axles = [
  ['Front axle', ['LF', 'RF']],
  ['Rear axle', ['RR', 'LR']],
  ['All four, for all-wheel drive', roadPositions],
] as const

/** How far the tires are apart once the new ones are on, and what a worn tire's warranty credits. */
export function TreadCheck({ state, sheet, fitted }: TreadCheckProps) {
  const [renewed, setRenewed] = useState<readonly RoadPosition[]>([])
  const [isNew, setIsNew] = useState<TypedFigure>(null)
  const [left, setLeft] = useState<TypedFigure>(null)
  const [price, setPrice] = useState<TypedFigure>(null)
  const [years, setYears] = useState<TypedFigure>(null)
  const [most, setMost] = useState<TypedFigure>(null)
  const depthNew = typeof isNew === 'number' ? isNew : null
  const tireAt = (wheel: RoadPosition): TireOnRoad | null => {
    const isRenewed = renewed.includes(wheel)
    const depth = isRenewed ? depthNew : (state.arrival.tires[wheel]?.treadDepth32nds ?? null)
    const size = isRenewed
      ? fitted
      : (tiresOf(sheet)?.[axleOf(wheel) === 'rear' ? 'rear' : 'front'].size ?? '')
    return depth === null ? null : { tread: { value: depth, unit: '1/32 in' }, size: measuredSize(size) }
  }
  const lines = axles.flatMap(([where, wheels]) => {
    const tires = wheels.flatMap((wheel) => {
      const tire = tireAt(wheel)
      return tire === null ? [] : [[wheel, tire] as const]
    })
    const apart = tires.length < wheels.length ? null : tiresApart(Object.fromEntries(tires))
    return apart === null ? [`${where}: not all of its treads are known.`] : [apartWords(where, apart)]
  })
  const credit =
    depthNew !== null && typeof left === 'number' && typeof price === 'number'
      ? proRata(
          depthNew,
          left,
          Math.round(price * 100),
          typeof years === 'number' && typeof most === 'number' ? { years, most } : null,
        )
      : undefined
  return (
    <>
      <CheckGroup
        label="Wheels that get a new tire"
        options={roadPositions.map((value) => ({ value, label: english.wheels.names[value] }))}
        values={renewed}
        onChange={setRenewed}
      />
      <NumberField label="Tread of the new tire" unit="/32 in" value={isNew} onChange={setIsNew} />
      <div role="status" aria-label="How far the tires are apart">
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <p className="quiet">
          An axle, and a center differential, has to even this out all the way. The vehicle maker’s limit
          governs.
        </p>
      </div>
      {sheet.spare === 'temporary' ? <p>{temporarySpareWords(spareApart(sheet))}</p> : null}
      <NumberField
        label="Warranty by wear: tread that is left"
        hint="Of a tire that failed under its warranty. Its depth when new is the tread above."
        unit="/32 in"
        value={left}
        onChange={setLeft}
      />
      <NumberField label="Price of the tire in its place" unit="$" value={price} onChange={setPrice} />
      <NumberField label="Years since it was bought" unit="years" value={years} onChange={setYears} />
      <NumberField
        label="Years that its warranty lasts"
        hint="By the warranty’s own text. Without both years only the tread counts."
        unit="years"
        value={most}
        onChange={setMost}
      />
      <div role="status" aria-label="What the warranty credits">
        {credit === undefined ? null : credit === null ? (
          <p>
            The tire is at its wear bars or older than its warranty lasts: it has given its service, and
            nothing is credited.
          </p>
        ) : (
          <p>
            {credit.wornPercent.toFixed(0)} % worn. The customer pays {money(credit.customerPaysCents)} before
            tax, and {money(credit.creditCents)} is credited. The warranty’s own text governs.
          </p>
        )}
      </div>
    </>
  )
}

/** How much smaller the spare is than the larger of the sheet's tires, in percent; `null` where it is not known. */
const spareApart = (sheet: SpecificationSheet): number | null => {
  const tires = tiresOf(sheet)
  const [front, rear, spare] = [tires?.front, tires?.rear, tires?.spare].map((tire) =>
    measuredSize(tire?.size ?? ''),
  )
  return front && rear && spare ? Math.max(spareSmallerBy(front, spare), spareSmallerBy(rear, spare)) : null
}

const measuredSize = (text: string): MeasuredTireSize | null => {
  const read = readTireSize(text)
  return read.ok && read.value.kind !== 'heightless' ? read.value : null
}
