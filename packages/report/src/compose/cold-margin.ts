import type { OrderState, WheelWork } from '@bayledger/ledger/state'
import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import { marginOverWarning, temperatureThatWarns } from '@bayledger/reckoning/pressure/warning-margin'
import { warningPoint } from '@bayledger/reckoning/pressure/warning-point'
import { placardOf, type SpecificationSheet, tiresOf } from '@bayledger/reckoning/sheet'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin, kelvinIn } from '@bayledger/reckoning/units/temperature-units'
import { axleOf, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { Block } from '../content.ts'
import { paragraph } from './blocks.ts'
import { number } from './figures.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.pressures.margin

/**
 * How far the road tires were left from lighting the warning light, and at what cold it would come on with no leak at
 * all: of the wheel that is nearest to it. Nothing where the vehicle does not measure, or a temperature was not read.
 */
export const coldMargin = (state: OrderState, context: Spoken): Block[] => {
  const sheet = state.sheet?.sheet
  if (sheet?.system !== 'direct') return []
  const stands = roadPositions.flatMap((wheel) => standOf(sheet, wheel, state.work[wheel]?.pressure ?? null))
  const [nearest] = stands.toSorted((one, other) => one.marginPsi - other.marginPsi)
  if (nearest === undefined) return []
  const { marginPsi, warnsAt, byMaker } = nearest
  const alike = stands.filter((stand) => stand.marginPsi === marginPsi)
  const near = says(context).nearest({
    wheels: alike.map(({ wheel }) => context.language.wheels.names[wheel]),
    all: stands.length,
    psi: number(marginPsi, 'psi'),
    byMaker,
  })
  return [paragraph(`${near} ${coldWords(context, warnsAt)}`)]
}

/** The lower limit: no margin is given for colder nights. */
const coldestTold = -40

const coldWords = (context: Spoken, fahrenheit: number): string =>
  fahrenheit < coldestTold
    ? says(context).noColdLightsIt(signed(coldestTold))
    : says(context).coldLightsIt(signed(fahrenheit))

const signed = (fahrenheit: number): string => number(fahrenheit).replace('-', '−')

type Stand = {
  readonly wheel: WheelPosition
  readonly marginPsi: number
  readonly warnsAt: number
  readonly byMaker: boolean
}

const standOf = (sheet: SpecificationSheet, wheel: WheelPosition, set: WheelWork['pressure']): Stand[] => {
  const placard = placardOf(sheet)?.[axleOf(wheel)]
  const tire =
    set?.surroundings.tire ?? (set?.surroundings.tires === 'cold' ? set.surroundings.outdoor : null)
  if (!set || !placard || !tire) return []
  const inPsi = (value: number) => inKilopascals({ value, unit: 'psi' })
  const makers = sheet.warnAtPsi?.[axleOf(wheel)] ?? null
  const warn = warningPoint({
    placard: inPsi(placard.psi),
    makersTrigger: makers === null ? null : inPsi(makers),
    loadClass: tiresOf(sheet)?.[axleOf(wheel)]?.loadClass ?? null,
    column: 'psi',
  })
  const air = airPressureAtAltitude(metersFromFeet(set.surroundings.altitudeFeet))
  const gauge = inKilopascals(set.asLeft)
  const at = inKelvin(tire)
  const to = inKelvin(set.surroundings.outdoor)
  const cold = shiftPressure({ gauge, from: at, to, airBefore: air, airAfter: air })
  return [
    {
      wheel,
      marginPsi: Math.round(kilopascalsIn('psi', marginOverWarning(cold, warn)) * 10) / 10,
      warnsAt: Math.round(kelvinIn('F', temperatureThatWarns({ gauge, at, warn, air }))),
      byMaker: makers !== null,
    },
  ]
}
