import type { Distance, Temperature } from '@bayledger/reckoning/quantity'
import { studsOf } from '@bayledger/reckoning/sheet'
import type { RetorqueMiles } from '@bayledger/reckoning/torque/retorque'
import { retorqueWindow, usualRetorqueMiles } from '@bayledger/reckoning/torque/retorque'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState, WheelWork } from '../state.ts'
import { airAfterADrive, carriedPsi } from './carried-pressure.ts'
import { dangersOf, isUnsafeToTake, type SpareHelp, spareHelp } from './dangers.ts'
import { proofOf, wheelsThatCameOff } from './gates.ts'
import { lastOdometer } from './odometer.ts'
import { minutesToDrive } from './proof.ts'
import { type Gauging, gaugingDue, isFixed, mayDrive, spareInUse } from './verdicts.ts'

/** One thing for the customer to do after the visit: a code and its figures. Days are YYYY-MM-DD. */
export type NextStep =
  | { readonly code: 'call-before-moving' }
  | ({ readonly code: 'tow-or-spare' } & SpareHelp)
  /** The spare is on in the place of this wheel. */
  | {
      readonly code: 'on-the-spare'
      readonly wheel: WheelPosition
      readonly spare: 'temporary' | 'full-size'
    }
  /** `miles`: the vehicle maker's distance. `at`: as odometer readings, unrounded; `null` where no odometer was read. */
  | {
      readonly code: 'retorque'
      readonly miles: RetorqueMiles
      readonly at: { readonly from: Distance; readonly to: Distance } | null
    }
  | { readonly code: 'report-the-light'; readonly minutes: number }
  | { readonly code: 'if-light-returns' }
  | { readonly code: 'light-stays-on' }
  | WarmTires
  /** Set to a limit under the figure for its temperature. psi: as left, and once as cold as the outdoors. */
  | {
      readonly code: 'set-again-cold'
      readonly wheels: readonly WheelPosition[]
      readonly psi: number
      readonly coldPsi: number | null
    }
  | ({ readonly code: 'check-pressures'; readonly firstBy: string } & Gauging)
  /** `day`: the first day that the customer agreed to. */
  | { readonly code: 'deferred-work'; readonly day: string }

/** The road tires that were set furthest over their label while warm; psi unrounded. */
export type WarmTires = {
  readonly code: 'warm-tires'
  readonly wheels: readonly WheelPosition[]
  readonly psi: number
  readonly labelPsi: number
  readonly outdoor: Temperature
  /** Once its air is as cold as the outdoors were. */
  readonly coldPsi: number | null
  readonly tonight: { readonly low: Temperature; readonly psi: number } | null
  readonly afterADrive: { readonly air: Temperature; readonly psi: number } | null
}

/**
 * "What is next?", for the customer who takes the vehicle, in the order in which it is read: what concerns safety first,
 * then the advice on pressures, then the agreed day. `today` is the shop's own day. A vehicle that must not be driven gets
 * no advice about driving.
 */
export const nextSteps = (state: OrderState, today: string): readonly NextStep[] => {
  if (mayDrive(state) === 'do-not-drive')
    return [{ code: 'call-before-moving' }, ...towOrSpare(state), ...retorque(state), ...deferredWork(state)]
  const gauging = gaugingDue(state)
  const spare = spareInUse(state)
  if (spare !== null)
    return [
      {
        code: 'on-the-spare',
        wheel: spare,
        spare: state.sheet?.sheet.spare === 'full-size' ? 'full-size' : 'temporary',
      },
      ...retorque(state),
      { code: 'check-pressures', ...gauging, firstBy: laterBy(today, gauging.every) },
      ...deferredWork(state),
    ]
  return [
    ...retorque(state),
    aboutTheLight(state),
    ...warmTires(state),
    ...setAgainCold(state),
    { code: 'check-pressures', ...gauging, firstBy: laterBy(today, gauging.every) },
    ...deferredWork(state),
  ]
}

/** What to expect of the warning light. One that was on, and of which the cause was left, does not come back: it stays. */
const aboutTheLight = (state: OrderState): NextStep => {
  if (proofOf(state).verdict === 'not-yet-proven')
    return { code: 'report-the-light', minutes: minutesToDrive(state) }
  const { behavior } = state.closing.telltale ?? state.arrival.telltale ?? { behavior: null }
  const isOn = behavior === 'solid' || behavior === 'flash-then-solid' || behavior === 'flash-continuous'
  return { code: isOn && isFixed(state).verdict === 'not-fixed' ? 'light-stays-on' : 'if-light-returns' }
}

const towOrSpare = (state: OrderState): readonly NextStep[] =>
  dangersOf(state).some(isUnsafeToTake) ? [{ code: 'tow-or-spare', ...spareHelp(state) }] : []

/** The day by which pressures are gauged the first time. */
const laterBy = (today: string, every: Gauging['every']): string => {
  const day = new Date(`${today}T00:00:00.000Z`)
  if (every === 'month') day.setUTCDate(day.getUTCDate() + 30)
  if (every === 'week') day.setUTCDate(day.getUTCDate() + 7)
  return day.toISOString().slice(0, 10)
}

/** The maker's own distance, as the specification sheet has it. */
const retorque = (state: OrderState): readonly NextStep[] => {
  const sheet = state.sheet?.sheet
  if (!sheet || wheelsThatCameOff(state).length === 0) return []
  const miles = studsOf(sheet)?.retorqueMiles ?? usualRetorqueMiles
  const odometer = lastOdometer(state)?.distance
  return [{ code: 'retorque', miles, at: odometer ? retorqueWindow(odometer, miles) : null }]
}

/** Under half a psi no gauge of a customer shows it. */
const worthSayingPsi = 0.5

const setOnRoad = (state: OrderState): readonly NonNullable<WheelWork['pressure']>[] =>
  readingOrder.flatMap((wheel) => (wheel === 'SP' ? [] : (state.work[wheel]?.pressure ?? [])))

/** Tires set while warmer than the outdoors read above their label until they are cold. */
const warmTires = (state: OrderState): readonly WarmTires[] => {
  const over = ({ target }: NonNullable<WheelWork['pressure']>) => target.psi - target.placardPsi
  const [most] = setOnRoad(state).toSorted((one, other) => over(other) - over(one))
  if (!most || over(most) < worthSayingPsi) return []
  const { outdoor, overnightLow } = most.surroundings
  const air = airAfterADrive(outdoor)
  const tonight = overnightLow && carriedPsi(most, overnightLow)
  const driven = carriedPsi(most, air)
  return [
    {
      code: 'warm-tires',
      wheels: setOnRoad(state)
        .filter(
          ({ target }) => target.psi === most.target.psi && target.placardPsi === most.target.placardPsi,
        )
        .map(({ wheel }) => wheel),
      psi: most.target.psi,
      labelPsi: most.target.placardPsi,
      outdoor,
      coldPsi: carriedPsi(most, outdoor),
      tonight: overnightLow && tonight !== null ? { low: overnightLow, psi: tonight } : null,
      afterADrive: driven === null ? null : { air, psi: driven },
    },
  ]
}

const setAgainCold = (state: OrderState): readonly NextStep[] => {
  const capped = readingOrder.flatMap((wheel) => {
    const set = state.work[wheel]?.pressure
    return set?.target.capped ? [set] : []
  })
  return [...Map.groupBy(capped, ({ target }) => target.psi)].map(([psi, sets]) => ({
    code: 'set-again-cold',
    wheels: sets.map(({ wheel }) => wheel),
    psi,
    coldPsi: sets[0] ? carriedPsi(sets[0], sets[0].surroundings.outdoor) : null,
  }))
}

const deferredWork = (state: OrderState): readonly NextStep[] => {
  const [day] = Object.values(state.answers)
    .filter(({ answer }) => answer === 'deferred')
    .flatMap(({ deferredUntil }) => (deferredUntil ? [deferredUntil] : []))
    .sort()
  return day ? [{ code: 'deferred-work', day }] : []
}
