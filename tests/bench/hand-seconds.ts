import { people } from '../../prisma/seeds/demo/people.ts'
import type { QuickHand } from '../faults/support/quick-hand.ts'
import type { Figure } from './table.ts'

/**
 * Seconds of a hand's work by the keystroke-level model (S. K. Card, T. P. Moran, A. Newell, Communications of the ACM 23
 * (1980) 396–410, operators of its table 1, from memory): a key 0.28 (someone who types 40 words a minute), a hand that goes
 * to another target 1.10, a thought before each unit of work 1.35. The model was measured with keyboards and mice; for a
 * finger on a tablet it is an estimate. The screen's answer to each touch is added as it was measured.
 */
const operators = { key: 0.28, point: 1.1, think: 1.35 } as const

type Counted = {
  readonly think: () => void
  readonly press: (name: string | RegExp) => Promise<void>
  readonly pressAt: (selector: string) => Promise<void>
  /** The hand goes to the pad once; its keys follow each other. */
  readonly type: (figure: string) => Promise<void>
  readonly seconds: () => number
}

const counted = (hand: QuickHand, answerSeconds: number): Counted => {
  let seconds = 0
  const touched = (keys: number) => {
    seconds += operators.point + keys * (operators.key + answerSeconds)
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
    pressAt: async (selector) => {
      must(await hand.pressAt(selector, 10_000), selector)
      touched(1)
    },
    type: async (figure) => {
      must(await hand.type(figure), figure)
      touched(figure.length)
    },
    seconds: () => seconds,
  }
}

/** What a person does most, touch by touch through the real screens; `answerSeconds`: what a screen takes to answer one. */
export const handSeconds = async (hand: QuickHand, answerSeconds: number): Promise<Figure[]> => {
  const pressures = counted(hand, answerSeconds)
  for (const wheel of ['left front', 'right front', 'right rear', 'left rear']) {
    pressures.think()
    await pressures.pressAt(`.plan-button[aria-label^="${wheel}"]`)
    if (!(await hand.title()).startsWith('Gauge the')) await pressures.press('Gauge')
    await pressures.type('31.5')
  }
  const wheel = counted(hand, answerSeconds)
  wheel.think()
  await wheel.pressAt('.plan-button[aria-label^="left front"]')
  if (!(await hand.title()).startsWith('Gauge the')) await wheel.press('Gauge')
  await wheel.type('31.5')
  wheel.think()
  await wheel.pressAt('.plan-button[aria-label^="left front"]')
  if (!(await hand.title()).startsWith('Ask the')) await wheel.press('Sensor')
  await wheel.press(/^Silent/)
  await wheel.press('3×')
  wheel.think()
  await wheel.pressAt('.plan-button[aria-label^="left front"]')
  if (!(await hand.title()).startsWith('Look at the')) await wheel.press('Tire')
  await wheel.press(/^All sound/)
  await wheel.press('7')

  const pin = counted(hand, answerSeconds)
  pin.think()
  await pin.press(/^Signed in:/)
  await pin.press(people.bo.name)
  await pin.type(people.bo.pin)
  await hand.comes('.plan-button', 20_000)
  return [
    { name: 'bay.hand.four-pressures.s', value: pressures.seconds(), unit: 's', goal: 25 },
    { name: 'bay.hand.wheel-as-received.s', value: wheel.seconds(), unit: 's', goal: null },
    { name: 'bay.hand.change-person.s', value: pin.seconds(), unit: 's', goal: null },
  ]
}
