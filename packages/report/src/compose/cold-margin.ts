import type { OrderState, WheelWork } from '@bayledger/ledger/state'
import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import { marginOverWarning, temperatureThatWarns } from '@bayledger/reckoning/pressure/warning-margin'
import { warningPoint } from '@bayledger/reckoning/pressure/warning-point'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin, kelvinIn } from '@bayledger/reckoning/units/temperature-units'
import { axleOf, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { Block } from '../content.ts'
import { listed, number } from './figures.ts'

/**
 * How far the road tires were left from lighting the warning light, and at what cold it would come on with no leak at
 * all: of the wheel that is nearest to it. Nothing where the vehicle does not measure, or a temperature was not read.
 */
export const coldMargin = (state: OrderState): Block[] => {
  const sheet = state.sheet?.sheet
  if (sheet?.system !== 'direct') return []
  const stands = roadPositions.flatMap((wheel) => standOf(sheet, wheel, state.work[wheel]?.pressure ?? null))
  const [nearest] = stands.toSorted((one, other) => one.marginPsi - other.marginPsi)
  if (nearest === undefined) return []
  const { marginPsi, warnsAt, byMaker } = nearest
  const alike = stands.filter((stand) => stand.marginPsi === marginPsi)
  return [
    {
      kind: 'paragraph',
      text: `${nearestWords(alike, stands.length)} once cold, as left, ${number(marginPsi, 'psi')} psi over ${byMaker ? 'the maker’s warning point' : 'the warning point of the rule; the maker’s own may lie higher'}. ${coldWords(warnsAt)}`,
      entry: null,
    },
  ]
}

/** Tires that are alike to a tenth are named together. */
const nearestWords = (alike: readonly Stand[], all: number): string => {
  if (alike.length === all && all > 1) return `All ${all} road tires are alike, each`
  const wheels = listed(alike.map(({ wheel }) => wheelNames[wheel]))
  return `Nearest to the warning light ${alike.length > 1 ? 'are' : 'is'} the ${wheels},`
}

/** The lower limit: no margin is given for colder nights. */
const coldestTold = -40

const coldWords = (fahrenheit: number): string =>
  fahrenheit < coldestTold
    ? `With no leak, no cold down to −${-coldestTold} °F would light it.`
    : `With no leak, cold alone would light it at about ${number(fahrenheit).replace('-', '−')} °F.`

type Stand = {
  readonly wheel: WheelPosition
  readonly marginPsi: number
  readonly warnsAt: number
  readonly byMaker: boolean
}

const standOf = (sheet: SpecificationSheet, wheel: WheelPosition, set: WheelWork['pressure']): Stand[] => {
  const placard = sheet.placard[axleOf(wheel)]
  const tire =
    set?.surroundings.tire ?? (set?.surroundings.tires === 'cold' ? set.surroundings.outdoor : null)
  if (!set || !placard || !tire) return []
  const inPsi = (value: number) => inKilopascals({ value, unit: 'psi' })
  const makers = sheet.warnAtPsi?.[axleOf(wheel)] ?? null
  const warn = warningPoint({
    placard: inPsi(placard.psi),
    makersTrigger: makers === null ? null : inPsi(makers),
    loadClass: sheet.tire[axleOf(wheel)]?.loadClass ?? null,
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
