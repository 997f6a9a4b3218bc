import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { TireDamage } from '@bayledger/reckoning/evidence/evidence'
import type { Step } from '@bayledger/reckoning/step'
import { readingOrder, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { PayloadOf } from '../registry.ts'
import type { Closing, FoundKind, OrderState, Written } from '../state.ts'
import { authorizedBundles } from './answers.ts'
import { holeTroubles } from './hole-troubles.ts'
import { refusableFinding, remedyOf, remedyWork } from './remedies.ts'
import { isSeating } from './tire-steps.ts'

/**
 * What a parked wheel waits for: the customer's answer, the part in hand, or the repair itself. `refused`: nothing, because
 * the customer refused the repair on record.
 */
export type WaitsFor = 'answer' | 'refused' | 'part' | 'repair'

/** Something that is not right and is not put right yet. It parks its wheel; without one, it only closes the road. */
export type OpenTrouble = {
  readonly wheel: WheelPosition | null
  readonly what: FoundKind
  readonly waitsFor: WaitsFor
  /** The entry after which it must be put right; 0 for damage seen on arrival, before all work. */
  readonly since: number
  readonly written: Written
}

type Leaving = NonNullable<PayloadOf<'refusal.recorded'>['leaves']>

type Trouble = Omit<OpenTrouble, 'waitsFor'>

/** Everything that was found at a step, inside a tire or on arrival and still has to be put right, in the order found. */
export const openTroubles = (state: OrderState): OpenTrouble[] =>
  everFound(state).flatMap((trouble): OpenTrouble[] => {
    const waitsFor = leftToDo(state, trouble)
    if (waitsFor === null) return []
    const isRefused = waitsFor === 'answer' && leavesBy(state, trouble) !== null
    return [{ ...trouble, waitsFor: isRefused ? 'refused' : waitsFor }]
  })

const everFound = (state: OrderState): Trouble[] => [
  ...atArrival(state),
  ...holeTroubles(state),
  ...atWork(state),
]

const atWork = ({ troubles }: OrderState): Trouble[] =>
  troubles.map(({ wheel, what, written }) => ({ wheel, what, written, since: written.seq }))

/** Damage that must not be worked over, by how a tire's look from outside records it. */
const unsafeTire: Readonly<Partial<Record<TireDamage, FoundKind>>> = {
  bulge: 'bulge',
  'cord-showing': 'cord',
  'cut-to-cord': 'cut',
}

const atArrival = ({ arrival }: OrderState): Trouble[] =>
  readingOrder.flatMap((wheel) => {
    const tire = arrival.tires[wheel]
    if (!tire) return []
    const found = [
      ...(tire.tireDamage ?? []).map((damage) => unsafeTire[damage]),
      ...((tire.fastenerDamage ?? []).length > 0 ? (['stud'] as const) : []),
    ]
    return found.flatMap((what) => (what ? [{ wheel, what, written: tire.written, since: 0 }] : []))
  })

const leftToDo = (state: OrderState, { wheel, what, since }: Trouble): WaitsFor | null => {
  const remedy = remedyOf(what)
  if (wheel !== null && remedy === 'tire') return untilNewTire(state, wheel, since)
  if (wheel !== null && (remedy === 'fastener' || remedy === 'hole')) {
    if (!isAuthorized(state, wheel, remedyWork[remedy])) return 'answer'
    const repaired = closingAt(state, wheel, ({ code }) => code === repairStep[remedy])
    return repaired && repaired.written.seq > since ? null : 'repair'
  }
  if (isDecidedAfter(state, since)) return null
  if (wheel === null || remedy !== 'part') return 'answer'
  const part = state.work[wheel]?.part
  if (part && part.written.seq > since) return null
  return planned(state, wheel).some(({ closedBy }) => closedBy === 'part.drawn') ? 'part' : 'answer'
}

const repairStep = { fastener: 'repair-fastener', hole: 'repair-leak' } as const

/** Another tire was authorized, matched and mounted. What was mounted before the trouble was found is the damaged one. */
const untilNewTire = (state: OrderState, wheel: WheelPosition, since: number): WaitsFor | null => {
  if (!isAuthorized(state, wheel, remedyWork.tire)) return 'answer'
  const matched = closingAt(state, wheel, ({ code }) => code === 'match-tire')
  if (!matched) return 'part'
  const seated = closingAt(state, wheel, isSeating)
  return seated && seated.written.seq > Math.max(since, matched.written.seq) ? null : 'repair'
}

const planned = ({ plan }: OrderState, wheel: WheelPosition): Step[] =>
  (plan?.plan.steps ?? []).filter((step) => step.wheel === wheel)

const closingAt = (
  state: OrderState,
  wheel: WheelPosition,
  isMeant: (step: Step) => boolean,
): Closing | undefined => {
  const step = planned(state, wheel).find(isMeant)
  return step && state.closed[step.stepKey]
}

const isAuthorized = (state: OrderState, wheel: WheelPosition, kind: string): boolean =>
  authorizedBundles(state).some(({ works }) =>
    works.some((work) => work.kind === kind && 'wheel' in work && work.wheel === wheel),
  )

/** The customer has answered a version of the estimate that was issued after this entry. */
const isDecidedAfter = ({ decisions, estimates }: OrderState, seq: number): boolean =>
  decisions.some(({ revision }) =>
    estimates.some(({ scope, written }) => scope.revision === revision && written.seq > seq),
  )

/** Before the new tire is in hand, only what takes the wheel off and opens the old one. */
const beforeNewTire: ReadonlySet<Step['closedBy']> = new Set([
  'part.drawn',
  'wheel.removed',
  'tire.inspected',
  'figure.confirmed',
  'sensor.programmed',
  'sealant.purged',
])
const ontoTheHub: ReadonlySet<Step['closedBy']> = new Set([
  'wheel.mounted',
  'studs.torqued',
  'torque.checked',
])
const afterSeating: ReadonlySet<Step['closedBy']> = new Set([...ontoTheHub, 'leak.checked', 'pressure.set'])

/** The trouble that keeps a step of its wheel shut; `null` if none does. */
export const parkedBy = (state: OrderState, step: Step): OpenTrouble | null =>
  step.wheel === null
    ? null
    : (openTroubles(state).find(
        (trouble) =>
          trouble.wheel === step.wheel && shuts(trouble, step) && !takesTheSpare(state, trouble, step),
      ) ?? null)

/** A tire whose repair the customer refused leaves its hub to the sound spare, which is torqued and filled like any wheel. */
const takesTheSpare = (state: OrderState, trouble: OpenTrouble, { wheel, closedBy }: Step): boolean => {
  if (wheel === null || !['tire', 'hole'].includes(remedyOf(trouble.what))) return false
  if (leavesBy(state, trouble) !== 'sound-spare') return false
  if (closedBy === 'wheel.removed' || closedBy === 'wheel.mounted') return true
  const isOn = state.work[wheel]?.mounted?.cameFrom === 'SP'
  return isOn && (ontoTheHub.has(closedBy) || closedBy === 'pressure.set')
}

const shuts = ({ what, waitsFor }: OpenTrouble, step: Step): boolean => {
  // What was seen of the hole is still written down.
  if (remedyOf(what) === 'hole' && step.code === 'judge-leak') return false
  if (waitsFor === 'answer' || waitsFor === 'refused') return true
  switch (remedyOf(what)) {
    case 'tire':
      return waitsFor === 'part'
        ? !step.opensTire && step.code !== 'match-tire' && !beforeNewTire.has(step.closedBy)
        : step.code === 'repair-leak' || afterSeating.has(step.closedBy)
    case 'hole':
      return isSeating(step) || afterSeating.has(step.closedBy)
    case 'fastener':
      return ontoTheHub.has(step.closedBy)
    default:
      return step.closedBy !== 'part.drawn'
  }
}

/** Whether every danger that a finding names was found at a wheel and put right there. */
export const isPutRight = (
  state: OrderState,
  { code, wheels }: Pick<Finding, 'code' | 'wheels'>,
): boolean => {
  const found = everFound(state).filter(({ what }) => refusableFinding(what) === code)
  return (
    wheels.length > 0 &&
    wheels.every((wheel) => found.some((trouble) => trouble.wheel === wheel)) &&
    found.every((trouble) => leftToDo(state, trouble) === null)
  )
}

/** What is wrong with the tire of a wheel and is not replaced yet. */
export const tireTroubleAt = (state: OrderState, wheel: WheelPosition): OpenTrouble | undefined =>
  openTroubles(state).find((trouble) => trouble.wheel === wheel && remedyOf(trouble.what) === 'tire')

/** Troubles that keep the vehicle off the road: all but those of a stowed spare. */
export const troublesOnTheRoad = (state: OrderState): OpenTrouble[] =>
  openTroubles(state).filter(({ wheel }) => wheel === null || isRoadWheel(wheel))

const isRoadWheel = (wheel: WheelPosition): boolean =>
  (roadPositions as readonly WheelPosition[]).includes(wheel)

/**
 * How the vehicle leaves with a trouble that the customer refused on record to have put right, after it was found; `null`
 * if they did not. A first version of the refusal did not say how: then the vehicle leaves as it is.
 */
export const leavesBy = ({ refusals }: OrderState, { wheel, what, since }: Trouble): Leaving | null => {
  const finding = refusableFinding(what)
  if (wheel === null || finding === null) return null
  const refusal = refusals[finding]
  return refusal !== undefined && refusal.written.seq > since && refusal.wheels.includes(wheel)
    ? (refusal.leaves ?? 'as-it-is')
    : null
}
