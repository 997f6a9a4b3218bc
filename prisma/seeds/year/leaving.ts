import type { Draft } from '@bayledger/ledger/entry'
import { patternMoves } from '@bayledger/reckoning/rotation/rotation-pattern'
import { sensorOf } from '@bayledger/reckoning/sheet'
import {
  type RoadPosition,
  readingOrder,
  roadPositions,
  type WheelPosition,
} from '@bayledger/reckoning/wheels'
import type { FittedPart } from '../demo/do-steps.ts'
import { withKeysBack } from '../demo/hand-back.ts'
import type { OrderPen } from '../demo/order-pen.ts'
import type { Received } from './as-received.ts'
import { type Car, newIds, perWheel, type SensorIds } from './car.ts'
import type { Chance } from './chance.ts'
import type { Story } from './story.ts'

type Visit = { readonly pen: OrderPen; readonly story: Story; readonly day: number }

/** The sensor that fits, of the series that was sold before today's stock. */
export const partNumberOf = ({ visitor }: Car): string => {
  const sensor = sensorOf(visitor.sheet)
  return `TL-${Math.floor(sensor?.frequencyMHz ?? 0)}-${sensor?.stem === 'snap-in' ? 'S' : 'C'}`
}

/** The sensors that answer once the authorized work is done. */
export const idsAfter = (
  car: Car,
  story: Story,
  received: Received,
  pen: OrderPen,
  parts: Readonly<Record<WheelPosition, FittedPart>>,
  chance: Chance,
): SensorIds => {
  const steps = pen.state().plan?.plan.steps ?? []
  const fitted = new Set(steps.filter(({ code }) => code === 'fit-sensor').map(({ wheel }) => wheel))
  const own: SensorIds = { ...received.ids }
  for (const wheel of readingOrder) if (fitted.has(wheel)) own[wheel] = parts[wheel].id
  const rotation = story.asked.find((job) => job.kind === 'rotation')
  if (rotation?.kind === 'rotation' && steps.some(({ code }) => code === 'check-tires-for-rotation')) {
    const moves = patternMoves(rotation.pattern)
    return {
      ...own,
      ...Object.fromEntries(roadPositions.map((place) => [place, own[moves[place] ?? place] ?? own[place]])),
    }
  }
  if (story.kind === 'season') {
    const other = car.otherIds ?? newIds(chance, false)
    return { ...own, LF: other.LF, RF: other.RF, RR: other.RR, LR: other.LR }
  }
  return own
}

type Leaving = {
  readonly ids: SensorIds
  readonly miles: number
  readonly off: readonly RoadPosition[]
  readonly tire: number
  readonly handBack: Draft
}

export const driveAway = (
  car: Car,
  { pen, story, day }: Visit,
  { ids, miles, off, tire, handBack }: Leaving,
): void => {
  const state = pen.state()
  const steps = state.plan?.plan.steps ?? []
  if (story.kind === 'season') {
    car.otherIds = { ...car.ids }
    car.sensorMade = perWheel(() => day - 900)
  }
  for (const wheel of readingOrder) {
    const set = state.work[wheel]?.pressure
    if (set) car.air[wheel] = { psi: set.asLeft.value, fahrenheit: tire, day }
    if (state.work[wheel]?.fitted) car.sensorMade[wheel] = day - 150
  }
  if (steps.some(({ code }) => code === 'match-tire')) {
    car.tiresMade = day - 120
    car.tread = { depth32nds: 10, miles }
  }
  car.ids = ids
  car.odometer = { miles, day }
  car.visits = [...car.visits, withKeysBack(state, handBack)]
  car.last = { orderId: pen.orderId, day, off }
}
