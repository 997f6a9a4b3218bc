import type { Pressure } from '@bayledger/reckoning/quantity'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { changeWheel } from '../../fold/change-wheel.ts'
import { closeStep } from '../../fold/close-step.ts'
import { type Appliers, type Foldable, type FoldableOf, recorded } from '../../fold/foldable.ts'
import { parkWheel } from '../../fold/park-wheel.ts'
import { reopen } from '../../fold/reopen.ts'
import { punctureVerdictAt } from '../../questions/puncture.ts'
import { isSeating } from '../../questions/tire-steps.ts'
import type { FoundKind, OrderState, TireRecord, VehicleCheck, WheelReadings } from '../../state.ts'
import { unreadWheel } from '../../state.ts'
import { correctedPressure } from './corrected-pressure.ts'
import type { arrivalKinds, GaugeUsed } from './kinds.ts'

export const applyArrival: Appliers<keyof typeof arrivalKinds> = {
  'wheel.checked': (state, entry) => {
    const { phase, wheel, stepKey } = entry.payload
    const checked = changeCheck(state, phase, (check) => ({
      ...check,
      wheels: { ...check.wheels, [wheel]: mergeReadings(check.wheels[wheel] ?? unreadWheel, entry) },
    }))
    return closeStep(checked, stepKey, entry)
  },
  'tire.inspected': (state, entry) => {
    const { when, wheel, stepKey, ...tire } = entry.payload
    const inspected =
      when === 'inside'
        ? lookedInside(state, wheel, tire, entry)
        : changeCheck(state, 'arrival', (check) => ({
            ...check,
            tires: { ...check.tires, [wheel]: mergedTire(check, wheel, tire, entry) },
          }))
    return closeStep(inspected, isJudged(inspected, wheel) ? stepKey : null, entry)
  },
  'module.read': (state, entry) =>
    closeStep(
      changeCheck(state, entry.payload.phase, (check) => ({
        ...check,
        module: recorded(entry.payload, entry),
      })),
      entry.payload.stepKey,
      entry,
    ),
  'check.skipped': (state, entry) => ({
    ...state,
    skippedChecks: [...state.skippedChecks, recorded(entry.payload, entry)],
  }),
  'telltale.observed': (state, entry) => {
    const { phase, stepKey, lampCheck, behavior, timed } = entry.payload
    const observed = changeCheck(state, phase, (check) => ({
      ...check,
      telltale: recorded(
        {
          lampCheck: lampCheck ?? check.telltale?.lampCheck ?? null,
          behavior: behavior ?? check.telltale?.behavior ?? null,
          timed: timed ?? check.telltale?.timed ?? null,
        },
        entry,
      ),
    }))
    return closeStep(observed, stepKey, entry)
  },
}

/** A look inside stays open until everything is measured that decides whether a hole may be repaired. */
const isJudged = (state: OrderState, wheel: WheelPosition): boolean =>
  !state.work[wheel]?.holes || punctureVerdictAt(state, wheel)?.verdict !== 'unknown'

/** What a look inside must not find, as the trouble that it is. */
const insideTrouble = {
  'run-low-damage': 'run-low-inside',
  cord: 'cord',
  separation: 'separation',
} as const satisfies Readonly<Partial<Record<NonNullable<TireRecord['inside']>, FoundKind>>>

/** Damage inside a tire parks its wheel: a later look cannot make the same tire sound again. */
const lookedInside = (
  state: OrderState,
  wheel: WheelPosition,
  tire: TireRecord,
  entry: Foldable,
): OrderState => {
  const looked = changeWheel(state, wheel, (work) => ({
    ...work,
    inside: recorded(mergeTire(work.inside, tire), entry),
    holes: tire.punctures ? recorded({ punctures: tire.punctures }, entry) : work.holes,
  }))
  const judgedAnew =
    (tire.punctures ?? []).length > 0
      ? reopen(looked, wheel, (step) => step.code === 'repair-leak' || isSeating(step))
      : looked
  const { inside } = tire
  if (inside !== 'run-low-damage' && inside !== 'cord' && inside !== 'separation') return judgedAnew
  const stepKey = entry.kind === 'tire.inspected' ? entry.payload.stepKey : null
  return parkWheel(judgedAnew, recorded({ stepKey, wheel, what: insideTrouble[inside], words: null }, entry))
}

const changeCheck = (
  state: OrderState,
  phase: 'arrival' | 'closing',
  change: (check: VehicleCheck) => VehicleCheck,
): OrderState => ({ ...state, [phase]: change(state[phase]) })

/** An absent member never erases a recorded one; a later reading of the same thing replaces the earlier one. */
const mergeReadings = (before: WheelReadings, entry: FoldableOf<'wheel.checked'>): WheelReadings => {
  const { mounted, gauge, sensor, notPossible } = entry.payload
  return {
    mounted: mounted ?? before.mounted,
    gauge: gauge ? recorded(corrected(gauge), entry) : before.gauge,
    sensor: sensor ? recorded({ reading: sensor }, entry) : before.sensor,
    notPossible: [...before.notPossible, ...notPossible],
  }
}

/** A reading counts as the master gauge would show it; what was read stays beside it. */
const corrected = <Read extends { readonly pressure: Pressure; readonly instrument: GaugeUsed }>(
  gauge: Read,
) => {
  const pressure = correctedPressure(gauge.pressure, gauge.instrument)
  return pressure === gauge.pressure ? gauge : { ...gauge, pressure, asRead: gauge.pressure }
}

const mergedTire = (check: VehicleCheck, wheel: WheelPosition, tire: TireRecord, entry: Foldable) =>
  recorded(mergeTire(check.tires[wheel] ?? null, tire), entry)

const mergeTire = (before: TireRecord | null, now: TireRecord): TireRecord => ({
  valve: now.valve ?? before?.valve ?? null,
  stem: now.stem ?? before?.stem ?? null,
  treadDepth32nds: now.treadDepth32nds ?? before?.treadDepth32nds ?? null,
  tireAgeYears: now.tireAgeYears ?? before?.tireAgeYears ?? null,
  sensorAgeMonths: now.sensorAgeMonths ?? before?.sensorAgeMonths ?? null,
  sealantSeen: now.sealantSeen ?? before?.sealantSeen ?? null,
  tireDamage: now.tireDamage ?? before?.tireDamage ?? null,
  fastenerDamage: now.fastenerDamage ?? before?.fastenerDamage ?? null,
  inside: now.inside ?? before?.inside ?? null,
  ...lastSaid(before, now),
})

/** A look that finds no puncture where one was recorded takes its holes back. */
const isUnpunctured = ({ tireDamage }: TireRecord): boolean =>
  tireDamage !== null && !tireDamage.includes('puncture')

/** What a later version of the entry added: absent where no entry said it. */
const lastSaid = (before: TireRecord | null, now: TireRecord): Partial<TireRecord> =>
  Object.fromEntries(
    (['punctures', 'sizeSeen', 'dateCodeSeen', 'casing', 'treadAcross', 'wearSeen'] as const).flatMap(
      (member) => {
        const seen =
          now[member] ?? (member === 'punctures' && isUnpunctured(now) ? undefined : before?.[member])
        return seen === undefined ? [] : [[member, seen]]
      },
    ),
  )
