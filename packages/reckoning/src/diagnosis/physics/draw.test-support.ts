import { type Air, airOf, gaugeOf, type LoadClass, type Place, warningPoint } from './air.test-support.ts'
import { type Instruments, instrumentsFrom, lightOf } from './instruments.test-support.ts'
import type { Random } from './random.test-support.ts'
import type { Story } from './stories.test-support.ts'
import { runLow, tireTruths } from './truth.test-support.ts'
import {
  type Axles,
  axleOfCorner,
  type Corner,
  corners,
  type EachCorner,
  eachCorner,
  type Sheet,
  type TrueVehicle,
} from './vehicle.test-support.ts'

export type Drawn = { readonly vehicle: TrueVehicle; readonly instruments: Instruments }

/**
 * Draws a vehicle of which the story is true. One whose light is not as the story says, or whose tires are so near to a
 * limit of safety that the instruments cannot show on which side they are is drawn again.
 */
export const drawVehicle = (random: Random, story: Story): Drawn => {
  for (let tries = 0; tries < 5_000; tries += 1) {
    const vehicle = vehicleOf(random, story)
    const instruments = instrumentsFrom(random)
    if (isTold(vehicle, instruments, story)) return { vehicle, instruments }
  }
  throw new Error(`no vehicle is like this: ${story.name}`)
}

const isTold = (vehicle: TrueVehicle, instruments: Instruments, story: Story): boolean => {
  const light = lightOf(vehicle, instruments)
  if (story.light !== undefined && (story.light === 'off') !== (light === 'off')) return false
  if (story.mountain === true && !agree(instruments)) return false
  const tires = tireTruths(vehicle)
  return (
    tires.every((tire) => runLow(vehicle, tire) !== 'unsure') &&
    tires.every(
      ({ corner, cold, label }) => !vehicle.overfilled.includes(corner) || cold >= 1.2 * label + 1.5,
    ) &&
    tires.every(({ corner, cold, warnAt }) =>
      vehicle.leaking.includes(corner) && story.light === 'off' ? cold > warnAt + 1.5 : true,
    )
  )
}

/** Sensors that differ among themselves by more than they differ from the gauge say nothing about the outside air. */
const agree = ({ sensor }: Instruments): boolean => {
  const shown = corners.map((corner) => sensor[corner](30))
  return Math.max(...shown) - Math.min(...shown) <= 0.8
}

const vehicleOf = (random: Random, story: Story): TrueVehicle => {
  const sheet = sheetOf(random, story)
  const here: Place = { fahrenheit: outdoorOf(random, story), meters: metersHere(random, story) }
  const lastSet = lastSetOf(random, story, here)
  const order = random.some(corners, 4)
  const leaking = leakingOf(random, story)
  const free = order.filter((corner) => !leaking.includes(corner))
  const dragging = story.dragging === true ? free.slice(0, 1) : []
  // A silent sensor may sit in the tire that leaks.
  const dead = story.dead === true ? [random.oneOf(corners.filter((one) => !dragging.includes(one)))] : []
  const overfilled = free.slice(0, story.overfilled ?? 0)
  const share = seepageShare(random, story)
  const filled = eachCorner((corner): Air => {
    const label = sheet.label[axleOfCorner(corner)]
    const to = overfilled.includes(corner)
      ? Math.max(sheet.sidewallMaximum * random.between(0.97, 1.01), label * random.between(1.25, 1.35))
      : label + random.between(-0.5, 0.5)
    const seeped = overfilled.includes(corner) ? 0 : label * share * random.between(0.96, 1.04)
    return airOf(to - seeped, lastSet)
  })
  const air = eachCorner((corner) =>
    leaking.includes(corner) ? leakedAir(random, story, sheet, here, filled, corner) : filled[corner],
  )
  const arrival = story.arrival ?? 'cold'
  return {
    sheet,
    lastSet: {
      ...lastSet,
      temperatureKnown: story.lastSetKnown === true || random.chance(0.6),
      altitudeKnown: story.descent === true ? random.chance(0.8) : random.chance(0.3),
    },
    here,
    arrival,
    told: toldOf(random, story),
    air,
    ...warmth(random, arrival, here.fahrenheit, dragging),
    leaking,
    dead,
    dragging,
    overfilled,
    sensorsReferToSea: story.mountain === true,
    earlier: random.chance(0.25) ? earlierVisit(random, story, here, filled) : null,
  }
}

/** Labels, warning floors and sidewall figures as they are common; trucks by load range (common practice, no source). */
const sheetOf = (random: Random, story: Story): Sheet => {
  if (story.truck === true) {
    const [loadClass, least, most, sidewallMaximum] = random.oneOf(truckClasses)
    const front = Math.round(random.between(least, most))
    const rear = Math.min(Math.round(front + random.oneOf([0, 0, 5, 10])), sidewallMaximum)
    const casing = random.oneOf(['steel', 'steel', 'polyester', 'unread'] as const)
    return { label: { front, rear }, loadClass, casing, sidewallMaximum }
  }
  const front = Math.round(random.between(30, 38))
  const label: Axles<number> = { front, rear: front + random.oneOf([0, 0, 0, -2, 2, 3]) }
  return {
    label,
    loadClass: random.oneOf(['SL', 'SL', 'XL'] as const),
    casing: 'unread',
    sidewallMaximum: random.oneOf([44, 51, 51]),
  }
}

const truckClasses: readonly (readonly [LoadClass, number, number, number])[] = [
  ['LT-C', 45, 50, 50],
  ['LT-D', 50, 62, 65],
  ['LT-E', 60, 78, 80],
]

const outdoorOf = (random: Random, { cold, arrival }: Story): number => {
  if (cold === true) return random.between(-15, 30)
  return arrival === 'indoor-warmed' ? random.between(10, 45) : random.between(20, 90)
}

const metersHere = (random: Random, { mountain, descent }: Story): number => {
  if (mountain === true) return random.between(1_400, 2_400)
  return descent === true ? random.between(0, 400) : random.oneOf([0, random.between(0, 600), 1_200])
}

const lastSetOf = (random: Random, { cold, descent, seepage }: Story, here: Place): Place => {
  const warmer = cold === true ? random.between(40, 75) : random.between(-8, seepage === true ? 30 : 10)
  return {
    fahrenheit: here.fahrenheit + warmer,
    meters: descent === true ? here.meters + random.between(1_600, 2_300) : here.meters,
  }
}

const leakingOf = (random: Random, { leaking }: Story): readonly Corner[] =>
  leaking === 'axle'
    ? random.oneOf([['LF', 'RF'] as const, ['RR', 'LR'] as const])
    : random.some(corners, leaking ?? 0)

/** Of the label's figure, what was lost evenly: little since the last check, or the loss of many months. */
const seepageShare = (random: Random, { seepage, farDown, cold, truck }: Story): number => {
  if (farDown === true) return random.between(0.55, 0.8)
  if (seepage === true) return random.between(0.14, 0.2)
  if (cold === true && truck !== true) return random.between(0, 0.06)
  return random.between(0, 0.02)
}

/** What is left in a tire that leaks: from nearly flat to just enough for the light, and well under what the others hold. */
const leakedAir = (
  random: Random,
  story: Story,
  { label, loadClass }: Sheet,
  here: Place,
  filled: EachCorner<Air>,
  corner: Corner,
): Air => {
  const own = label[axleOfCorner(corner)]
  const warnAt = warningPoint(own, loadClass)
  const whole = gaugeOf(filled[corner], here)
  const least = Math.max(5, 0.12 * own)
  const left =
    story.light === 'off' ? random.between(warnAt + 1.5, whole - least) : random.between(0.25, 1) * warnAt
  return airOf(Math.min(left, whole - least), here)
}

const toldOf = (random: Random, { arrival, dragging }: Story): TrueVehicle['told'] => {
  if (dragging === true) return random.oneOf(['driven', 'driven', 'cold', null] as const)
  return random.chance(0.9) ? (arrival ?? 'cold') : null
}

/** How warm the air in each tire is as it is gauged, and how much hotter the rim. A dragging brake heats both. */
const warmth = (
  random: Random,
  arrival: TrueVehicle['arrival'],
  outdoor: number,
  dragging: readonly Corner[],
): Pick<TrueVehicle, 'airTemperature' | 'rimHotter'> => {
  const bay = random.between(60, 72)
  const soaked = random.between(0.75, 1)
  const rise = random.between(15, 45)
  // The sensor ends at 257 °F; a corner hotter than that is silent.
  const brake = Math.min(random.between(60, 170), 235 - outdoor - rise)
  const heatInTire = random.between(0.2, 0.4)
  const usual = {
    cold: () => outdoor + random.between(-1, 3),
    driven: () => outdoor + rise + random.between(-4, 4),
    'indoor-warmed': () => outdoor + (bay - outdoor) * soaked + random.between(-2, 2),
  }[arrival]
  const isDragging = (corner: Corner) => dragging.includes(corner)
  return {
    airTemperature: eachCorner((corner) => usual() + (isDragging(corner) ? brake * heatInTire : 0)),
    rimHotter: eachCorner((corner) => {
      if (isDragging(corner)) return brake * (1 - heatInTire)
      return arrival === 'driven' ? random.between(0, 3) : 0
    }),
  }
}

/** An earlier visit, before a leak began; an ordinary tire has since lost about 1 psi a month (common practice, no source). */
const earlierVisit = (
  random: Random,
  story: Story,
  here: Place,
  filled: EachCorner<Air>,
): TrueVehicle['earlier'] => {
  const daysAgo = Math.round(random.between(3, 30))
  const place = { fahrenheit: here.fahrenheit + random.between(-10, 25), meters: here.meters }
  const seeped = story.overfilled === undefined ? (daysAgo / 30) * random.between(0.5, 1.3) : 0
  const before = eachCorner((corner) => airOf(gaugeOf(filled[corner], place) + seeped, place))
  return story.farDown === true ? null : { daysAgo, place, air: before }
}
