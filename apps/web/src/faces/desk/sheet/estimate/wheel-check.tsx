import { type SheetStuds, type SpecificationSheet, studsOf } from '@bayledger/reckoning/sheet'
import { millimeters } from '@bayledger/reckoning/units/measured'
import { type WheelMeasured, wheelFit } from '@bayledger/reckoning/wheel/wheel-fit'
import { useState } from 'react'
import { ChoiceGroup } from '../../../../ui/choice-group.tsx'
import { NumberField } from '../../../../ui/number-field.tsx'
import type { TypedFigure } from '../../../../ui/number-text.ts'
import { FoldedCheck } from './folded-check.tsx'
import { wheelFitWords } from './wheel-check-words.ts'

type Seat = SheetStuds['seat']
type Typed = Readonly<Record<'circle' | 'hub' | 'width' | 'offset', TypedFigure>>
const untyped: Typed = { circle: null, hub: null, width: null, offset: null }

const seats = [
  { value: 'cone', label: 'Cone' },
  { value: 'ball', label: 'Ball' },
  { value: 'flat', label: 'Flat' },
] as const

/** Whether a wheel that is not the vehicle's own may go on, and where it comes to lie. */
export function WheelCheck({ sheet }: { sheet: SpecificationSheet }) {
  const studs = studsOf(sheet)
  const [own, setOwn] = useState<Typed>(untyped)
  const [other, setOther] = useState<Typed>(untyped)
  const [holes, setHoles] = useState<TypedFigure>(null)
  const [wheelSeat, setWheelSeat] = useState<Seat | null>(null)
  const [fastenerSeat, setFastenerSeat] = useState<Seat | null>(studs?.seat ?? null)
  const [turns, setTurns] = useState<TypedFigure>(null)
  if (studs === null) return <p>The sheet does not have the studs yet: no wheel can be checked against it.</p>
  const isTyped =
    [holes, turns, ...Object.values(other)].some((typed) => figure(typed) !== null) || wheelSeat !== null
  const says = !isTyped
    ? null
    : wheelFitWords(
        wheelFit({
          vehicle: measured(own, studs.count),
          wheel: measured(other, figure(holes)),
          seats: { fastener: fastenerSeat, wheel: wheelSeat },
          thread: studs.thread,
          turns: figure(turns),
          sheetTurns: studs.handTurns,
        }),
      )
  return (
    <FoldedCheck
      summary="Check another wheel"
      verdictName="What the check of the wheel says"
      says={says}
      toEnter="Enter what is measured of the other wheel."
    >
      <p className="quiet">
        {`By the sheet: ${studs.count} holes, ${studs.thread}, seat: ${studs.seat}, at least ${studs.handTurns} turns by hand. Measure both wheels; the wheel maker’s page has the same figures.`}
      </p>
      <NumberField label="Bolt holes of the other wheel" unit="" value={holes} onChange={setHoles} />
      {rows.map(({ key, ownLabel, otherLabel, unit }) => (
        <div key={key} className="row">
          <NumberField
            label={ownLabel}
            unit={unit}
            value={own[key]}
            onChange={(typed) => setOwn({ ...own, [key]: typed })}
          />
          <NumberField
            label={otherLabel}
            unit={unit}
            value={other[key]}
            onChange={(typed) => setOther({ ...other, [key]: typed })}
          />
        </div>
      ))}
      <ChoiceGroup
        label="Seats in the other wheel"
        options={seats}
        value={wheelSeat}
        onChange={setWheelSeat}
      />
      <ChoiceGroup
        label="Seat of the nuts or bolts that are used"
        options={seats}
        value={fastenerSeat}
        onChange={setFastenerSeat}
      />
      <NumberField
        label="Turns by hand until they seat in the other wheel"
        unit="turns"
        value={turns}
        onChange={setTurns}
      />
    </FoldedCheck>
  )
}

const rows = [
  {
    key: 'circle',
    ownLabel: 'Bolt circle of the own wheel',
    otherLabel: 'Of the other wheel: bolt circle',
    unit: 'mm',
  },
  { key: 'hub', ownLabel: 'Diameter of the hub', otherLabel: 'Of the other wheel: bore', unit: 'mm' },
  { key: 'width', ownLabel: 'Width of the own rim', otherLabel: 'Of the other wheel: width', unit: 'in' },
  {
    key: 'offset',
    ownLabel: 'Offset of the own wheel',
    otherLabel: 'Of the other wheel: offset',
    unit: 'mm',
  },
] as const satisfies readonly { key: keyof Typed; ownLabel: string; otherLabel: string; unit: string }[]

const figure = (typed: TypedFigure): number | null => (typeof typed === 'number' ? typed : null)

const measured = (typed: Typed, holes: number | null): WheelMeasured => {
  const [circle, hub, width, offset] = [typed.circle, typed.hub, typed.width, typed.offset].map(figure)
  return {
    holes,
    boltCircle: circle ? millimeters(circle) : null,
    hub: hub ? millimeters(hub) : null,
    rim: width && typeof offset === 'number' ? { widthInches: width, offset: millimeters(offset) } : null,
  }
}
