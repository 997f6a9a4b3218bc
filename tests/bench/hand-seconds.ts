import { people } from '../../prisma/seeds/demo/people.ts'
import type { QuickHand } from '../faults/support/quick-hand.ts'
import type { Figure } from './table.ts'

/**
 * Seconds of a hand's work by the keystroke-level model (S. K. Card, T. P. Moran, A. Newell, Communications of the ACM 23
 * (1980) 396–410, operators of its table 1, from memory): a key 0.28 (someone who types 40 words a minute), a hand that goes
 * to another target 1.10, a thought before each unit of work 1.35, a stroke that is drawn 0.9 and each centimeter of it 0.16. The model was measured with keyboards and mice; for a
 * finger on a tablet it is an estimate. The screen's answer to each touch is added as it was measured.
 */
export const operators = { key: 0.28, point: 1.1, think: 1.35, stroke: 0.9, centimeterDrawn: 0.16 } as const

type Counted = {
  readonly think: () => void
  readonly press: (name: string | RegExp) => Promise<void>
  /** Opens what is next of this wheel. */
  readonly openWheel: (wheel: string) => Promise<void>
  /** The hand goes to the pad once; its keys follow each other. */
  readonly type: (figure: string) => Promise<void>
  /** `answerSeconds`: what a screen takes to answer one touch. */
  readonly seconds: (answerSeconds: number) => number
}

const counted = (hand: QuickHand): Counted => {
  let seconds = 0
  let touches = 0
  const touched = (keys: number) => {
    seconds += operators.point + keys * operators.key
    touches += keys
  }
  const must = (isDone: boolean, what: string | RegExp) => {
    if (!isDone) throw new Error(`the screen does not offer ${what}`)
  }
  return {
    think: () => {
      seconds += operators.think
    },
    press: async (name) => {
      must(await hand.press(name, 10_000), name)
      touched(1)
    },
    openWheel: async (wheel) => {
      must(await hand.pressAt(`.plan-button[aria-label^="${wheel}"]`, 10_000), wheel)
      touched(1)
      must(await hand.titled(new RegExp(`the ${wheel}`), 10_000), wheel)
    },
    type: async (figure) => {
      must(await hand.type(figure), figure)
      touched(figure.length)
    },
    seconds: (answerSeconds) => seconds + touches * answerSeconds,
  }
}

/** Whether the screen brings up the gauge of this tire by itself. */
const bringsUp = (hand: QuickHand, wheel: string): Promise<boolean> =>
  hand.page
    .locator('h1', { hasText: `Gauge the ${wheel}` })
    .waitFor({ timeout: 20_000 })
    .then(
      () => true,
      () => false,
    )

/**
 * What a person does most, touch by touch through the real screens, on an order of which no tire is gauged and one is about
 * to be. Gives the figures by what a screen takes to answer a touch, in seconds.
 */
export const handSeconds = async (hand: QuickHand): Promise<(answerSeconds: number) => Figure[]> => {
  const pressures = counted(hand)
  for (const wheel of ['left front', 'right front', 'right rear', 'left rear']) {
    pressures.think()
    if (!(await bringsUp(hand, wheel))) {
      await pressures.openWheel(wheel)
      if (!(await hand.title()).startsWith('Gauge the')) await pressures.press('Gauge')
    }
    await pressures.type('31.5')
  }
  const wheel = counted(hand)
  wheel.think()
  await wheel.openWheel('left front')
  if (!(await hand.title()).startsWith('Gauge the')) await wheel.press('Gauge')
  await wheel.type('31.5')
  wheel.think()
  await wheel.openWheel('left front')
  if (!(await hand.title()).startsWith('Ask the')) await wheel.press('Sensor')
  await wheel.press(/^Silent/)
  await wheel.press('3×')
  wheel.think()
  await wheel.openWheel('left front')
  if (!(await hand.title()).startsWith('Look at the')) await wheel.press('Tire')
  await wheel.press(/^All sound/)
  await wheel.press('7')

  const pin = counted(hand)
  pin.think()
  await pin.press(/^Signed in:/)
  await pin.press(people.bo.name)
  await pin.type(people.bo.pin)
  await hand.comes('.plan-button', 20_000)
  return (answerSeconds) => [
    {
      name: 'bay.hand.four-pressures.s',
      value: pressures.seconds(answerSeconds),
      unit: 's',
      goal: 25,
    },
    { name: 'bay.hand.wheel-as-received.s', value: wheel.seconds(answerSeconds), unit: 's', goal: null },
    { name: 'bay.hand.change-person.s', value: pin.seconds(answerSeconds), unit: 's', goal: null },
  ]
}
