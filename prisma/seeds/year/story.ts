import type { EventEvidence, StemCondition, TireDamage } from '@bayledger/reckoning/evidence/evidence'
import type { AskedJob } from '@bayledger/reckoning/money/asked-jobs'
import { patternsFor } from '@bayledger/reckoning/money/asked-jobs'
import { sensorOf } from '@bayledger/reckoning/sheet'
import { type RoadPosition, roadPositions } from '@bayledger/reckoning/wheels'
import { type Car, monthsBetween, newIds, type SensorIds } from './car.ts'
import type { Chance } from './chance.ts'
import { weatherOn } from './weather.ts'

/** Why a vehicle comes, as nobody at the desk knows yet. */
export type StoryKind =
  | 'cold'
  | 'battery'
  | 'two-batteries'
  | 'early-failure'
  | 'stem'
  | 'nail'
  | 'other-wheels'
  | 'wrong-frequency'
  | 'spare'
  | 'reset'
  | 'rotation'
  | 'season'
  | 'tires'
  | 'torque-again'
  | 'pressures'
  | 'outside-work'
  | 'nothing'
  | 'bulge'
  | 'lost-relearn'

export type Story = {
  readonly kind: StoryKind
  readonly words: string
  readonly events: readonly EventEvidence[]
  readonly asked: readonly AskedJob[]
  /** Wheels whose sensor stays silent. */
  readonly silent: readonly RoadPosition[]
  /** What one wheel has lost beside what all tires seep, in psi. */
  readonly lost: Partial<Readonly<Record<RoadPosition | 'SP', number>>>
  readonly stem: Partial<Readonly<Record<RoadPosition, StemCondition>>>
  readonly damage: Partial<Readonly<Record<RoadPosition, readonly TireDamage[]>>>
  /** What the vehicle has stored, where that is not what its wheels send. */
  readonly stored: SensorIds | null
  readonly frequencyMHz: Partial<Readonly<Record<RoadPosition, number>>>
  readonly comesBack: boolean
}

const nothing: Omit<Story, 'kind' | 'words'> = {
  events: [],
  asked: [],
  silent: [],
  lost: {},
  stem: {},
  damage: {},
  stored: null,
  frequencyMHz: {},
  comesBack: false,
}

/** A battery lasts eight to twelve years; before six none of the year's fails by age (common practice, no source). */
const earliestBatteryMonths = 72

/** Which stories a vehicle can have on a day, with how often each comes. */
export const storyFor = (car: Car, day: number, chance: Chance): Story => {
  const { sheet } = car.visitor
  const text = new Date(day * 86_400_000).toISOString().slice(0, 10)
  const month = Number(text.slice(5, 7))
  const isCold = weatherOn(text).mean < 42
  const isDirect = sheet.system === 'direct'
  const oldest = monthsBetween(Math.min(...roadPositions.map((wheel) => car.sensorMade[wheel])), day)
  const isAged = isDirect && oldest >= earliestBatteryMonths
  const patterns = patternsFor(sheet).filter((pattern) => !pattern.startsWith('five'))
  const kinds: readonly (readonly [number, StoryKind])[] = [
    [isCold ? 26 : 0, 'cold'],
    [isAged ? 34 : 0, 'battery'],
    [isAged && oldest >= 96 ? 10 : 0, 'two-batteries'],
    [8, 'stem'],
    [10, 'nail'],
    [isDirect && car.last === null && [11, 12, 4].includes(month) ? 8 : 0, 'other-wheels'],
    [isDirect && sensorOf(sheet)?.frequencyMHz !== 2_400 ? 4 : 0, 'wrong-frequency'],
    [sheet.spareMonitored ? 14 : 0, 'spare'],
    [isDirect ? 0 : 40, 'reset'],
    [patterns.length > 0 ? 8 : 0, 'rotation'],
    [[4, 11].includes(month) && isDirect ? 60 : 0, 'season'],
    [9, 'tires'],
    [7, 'pressures'],
    [3, 'outside-work'],
    [5, 'nothing'],
    [3, 'bulge'],
  ]
  return tell(chance.weighted(kinds), car, chance)
}

/** A story of one kind, at the wheels that chance takes. */
export const tell = (kind: StoryKind, car: Car, chance: Chance): Story => {
  const { sheet } = car.visitor
  const wheel = chance.pick(roadPositions)
  const other = chance.pick(roadPositions)
  const story = (words: string, rest: Partial<Story> = {}): Story => ({ ...nothing, kind, words, ...rest })
  const pattern = patternsFor(sheet).find((one) => !one.startsWith('five')) ?? 'front-to-back'
  const flashes = 'It flashes for a minute when I start it and then stays on.'
  switch (kind) {
    case 'cold':
      return story('The tire light came on with the cold and stays on.')
    case 'battery':
      return story(flashes, { silent: [oldestWheel(car)] })
    case 'two-batteries':
      return story(`${flashes} For weeks now.`, {
        silent: byAge(car).slice(0, 2),
      })
    case 'early-failure':
      return story('It flashes again. You put a sensor in not long ago.', {
        silent: [youngestWheel(car)],
        comesBack: true,
      })
    case 'lost-relearn':
      return story('It flashes since I was here.', { comesBack: true })
    case 'stem':
      return story('I fill one tire every few days.', {
        lost: { [wheel]: chance.between(9, 12) },
        stem: { [wheel]: 'leaks' },
      })
    case 'nail':
      return story('The light is on, and one tire looks low.', {
        lost: { [wheel]: chance.between(8, 12) },
        damage: { [wheel]: ['puncture'] },
      })
    case 'other-wheels':
      return story('It flashes since the other wheels are on.', {
        events: [{ kind: 'seasonal-wheels', happened: true, daysAgo: chance.whole(2, 9) }],
        stored: newIds(chance, sheet.spareMonitored),
      })
    case 'wrong-frequency':
      return story('Somebody put a sensor in, and now it flashes at every start.', {
        events: [{ kind: 'sensor-replaced-elsewhere', happened: true, wheel, daysAgo: chance.whole(5, 40) }],
        frequencyMHz: { [wheel]: sensorOf(sheet)?.frequencyMHz === 315 ? 433.92 : 315 },
      })
    case 'spare':
      return story('The light is on and all four are fine.', { lost: { SP: chance.between(17, 26) } })
    case 'reset':
      return story('I set the tires myself and the light stays on.', {
        events: [{ kind: 'rotation', happened: true, daysAgo: chance.whole(2, 12) }],
      })
    case 'rotation':
      return story('Rotate them, please.', { asked: [{ kind: 'rotation', pattern }] })
    case 'season':
      return story('My other wheels are in the back. Put them on, please.', { asked: [{ kind: 'season' }] })
    case 'tires':
      return story('I need tires.', {
        asked: [
          {
            kind: 'tires',
            wheels: chance.isOf(0.6) ? [...roadPositions] : (['LF', 'RF'] as const),
            tire: null,
          },
        ],
      })
    case 'torque-again':
      return story('You said to come back to have the nuts checked.', {
        asked: [{ kind: 'torque-again', wheels: car.last?.off ?? [] }],
      })
    case 'pressures':
      return story('Check the air before my trip, please.', { asked: [{ kind: 'pressures' }] })
    case 'outside-work':
      return story('It hit a pothole, and the wheel has a bend.', { asked: [{ kind: 'pressures' }] })
    case 'nothing':
      return story('The light was on yesterday. Today it is off.')
    case 'bulge':
      return story('It shakes since I hit a curb.', {
        events: [{ kind: 'collision', happened: true, wheel: other, daysAgo: chance.whole(1, 5) }],
        damage: { [other]: ['bulge'] },
      })
  }
}

const oldestWheel = (car: Car): RoadPosition => byAge(car)[0]
const youngestWheel = (car: Car): RoadPosition => byAge(car)[3]
const byAge = (car: Car): readonly [RoadPosition, RoadPosition, RoadPosition, RoadPosition] => {
  const [first, second, third, fourth] = roadPositions.toSorted(
    (one, two) => car.sensorMade[one] - car.sensorMade[two],
  )
  return [first ?? 'LF', second ?? 'RF', third ?? 'RR', fourth ?? 'LR']
}
