import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import {
  button,
  checkArrival,
  enroll,
  greta,
  ines,
  leaves,
  names,
  shows,
  signIn,
  type,
} from './support/bay.ts'
import { workFigures as work, workThrough } from './support/bay-steps.ts'
import { decideAndSign } from './support/customer.ts'
import {
  customerLink,
  enrollmentCode,
  issueEstimate,
  openOrder,
  signInAtDesk,
  writeUp,
} from './support/desk.ts'
import { customer, plate, wheels } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { centerOf, handOf, slowNetwork, tap } from './support/touch.ts'

/** The proof drive takes 23 minutes by the clock of the tablet. */
const browser = setStage(30)

type Written = { readonly kind: string; readonly payload: Record<string, unknown> }

/** What the server's ledger holds of the order on the screen, once it holds `count` entries of a kind. */
const written = async (page: Page, kind: string, count: number): Promise<Record<string, unknown>[]> => {
  const read = () =>
    page.evaluate(async () => {
      const orderId = /[0-9a-f-]{36}/.exec(location.pathname)?.[0]
      const reply = await fetch(`/api/orders/${orderId}`, { headers: { 'bayledger-face': 'bay' } })
      return ((await reply.json()) as { entries: Written[] }).entries
    })
  for (let tries = 0; tries < 20; tries += 1) {
    const found = (await read()).filter((entry) => entry.kind === kind)
    if (found.length >= count) return found.map(({ payload }) => payload)
    await page.waitForTimeout(500)
  }
  throw new Error(`the ledger does not get ${count} of ${kind}`)
}

describe('a whole job by touch, with the server 700 ms away', () => {
  let bay: Page
  let desk: Page
  beforeAll(async () => {
    desk = await browser().open('desk', '/desk/sign-in')
    await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
    const code = await enrollmentCode(desk)
    await writeUp(desk, { customer, plate, words: 'It flashes, then it stays on.' })
    bay = await browser().open('bay', '/bay/enroll')
    await enroll(bay, code)
    await signIn(bay, ines)
    await tap(button(bay, `Take it: ${plate}`))
    await shows(bay, 'Note the temperatures')
    await slowNetwork(bay, 700)
  })

  it('begins with an arrival of 70 touches at most, and every figure is written at the wheel that the screen showed', async () => {
    onTestFailed(() => browser().picture('out'))
    const hand = await handOf(bay)
    const before = hand.touches()
    await checkArrival(bay, wheels, '27')
    expect(hand.touches() - before).toBeLessThanOrEqual(70)
    await shows(bay, /readings say/)

    const checked = await written(bay, 'wheel.checked', 9)
    const gauged = checked.flatMap(({ wheel, gauge }) =>
      gauge === null ? [] : [[wheel, (gauge as { pressure: { value: number } }).pressure.value]],
    )
    expect(Object.fromEntries(gauged)).toEqual(
      Object.fromEntries(Object.entries(wheels).map(([wheel, read]) => [wheel, Number(read.gauge)])),
    )
    // Nobody read a frequency or a battery, and none is on record.
    const sensors = checked.flatMap(({ sensor }) =>
      sensor === null ? [] : [sensor as Record<string, unknown>],
    )
    expect(sensors.map(({ answer }) => answer)).toEqual(['answered', 'answered', 'silent', 'answered'])
    for (const sensor of sensors.filter(({ answer }) => answer === 'answered'))
      expect(sensor).toMatchObject({ frequencyMHz: null, battery: null })
    expect(await written(bay, 'tire.inspected', 5)).toHaveLength(5)
  })

  it('loses no key of two thumbs that overlap, and none after a figure was recorded', async () => {
    const hand = await handOf(bay)
    const key = (name: string) => centerOf(button(bay, name, true))
    await tap(button(bay, /^left front/i))
    await shows(bay, 'Gauge the left front tire')
    const [three, two] = [await key('3'), await key('2')]
    await hand.down(three, 1)
    await hand.down(two, 2)
    await bay.waitForTimeout(80)
    await hand.up(1)
    await hand.up(2)
    expect(await bay.locator('.pad-entry').inputValue()).toBe('32')
    await type(bay, '.1')
    await shows(bay, /readings say/)
    await tap(button(bay, /^right front/i))
    await type(bay, '31.9')
    await shows(bay, /readings say/)
    const checked = await written(bay, 'wheel.checked', 11)
    expect(checked.slice(-2)).toMatchObject([
      { wheel: 'LF', gauge: { pressure: { value: 32.1 } } },
      { wheel: 'RF', gauge: { pressure: { value: 31.9 } } },
    ])
    expect(await bay.getByText(names.RF).count()).toBeGreaterThan(0)
  })

  it('goes on to findings and a signed answer; sealant that is seen brings a purge before the tire is opened', async () => {
    onTestFailed(() => browser().picture('out'))
    await tap(button(bay, /^right rear/i))
    await tap(button(bay, 'Tire', true))
    await tap(button(bay, 'Size, date code, more'))
    await tap(bay.locator('.row-cell', { hasText: 'Sealant' }))
    await tap(button(bay, 'Sealant seen'))
    await tap(button(bay, 'Record what was looked at'))
    await shows(bay, /readings say/)
    await tap(button(bay, /confirm the findings/))
    await shows(bay, 'Nothing for the bay now')
    await openOrder(desk, customer)
    await issueEstimate(desk)
    const link = await customerLink(desk)
    const phone = await browser().open('customer', new URL(link).pathname + new URL(link).hash)
    await decideAndSign(phone, customer)
    await leaves(bay, 'Nothing for the bay now')

    const purge = /^Outdoors: purge the sealant gas/
    expect(await workThrough(bay, work, purge)).toContainEqual(expect.stringMatching(/^Take the wheel off/))
    await tap(button(bay, 'Outdoors'))
    await tap(button(bay, 'Four times'))
    await tap(button(bay, /^Go on/))
    // Whoever purges is not the one who knows of it, and somebody else's digits are no agreement.
    expect(await button(bay, ines.name, true).count()).toBe(0)
    await tap(button(bay, greta.name, true))
    await type(bay, ines.pin)
    await bay.getByText('The PIN is wrong').first().waitFor()
    expect(await written(bay, 'sealant.purged', 0)).toEqual([])
    await type(bay, greta.pin)
    const [purged] = await written(bay, 'sealant.purged', 1)
    expect(purged).toMatchObject({ wheel: 'RR', outdoors: true, times: 4, aware: { proof: { how: 'pin' } } })
  })

  it('takes a step back by Undo, and keeps a half-filled one while the person is changed', async () => {
    onTestFailed(() => browser().picture('out'))
    await workThrough(bay, work, /^Let the air off/)
    // The tire stays shut until the customer knows of the danger, and the bay is told who opens it.
    await bay
      .locator('.bay-step')
      .getByText(/The desk tells the customer and notes it/)
      .waitFor()
    await desk.getByLabel('The customer’s answer').fill('Go on, and thank you for telling me.')
    await desk.getByRole('button', { name: 'Told in person' }).click()
    await tap(button(bay, 'Done', true))
    await tap(button(bay, /^Undo RR · Let the air off/))
    await shows(bay, /^Let the air off/)
    expect((await written(bay, 'entry.struck', 1)).at(-1)).toMatchObject({ reason: 'undone' })
    await workThrough(bay, work, /^Wheel on/)
    await tap(button(bay, /^Right and clean/))
    for (const person of [greta, ines]) {
      await tap(button(bay, /Change person/))
      await signIn(bay, person)
    }
    await shows(bay, /^Wheel on/)
    expect(await bay.locator('.row-cell').first().textContent()).toContain('Right and clean')
    await tap(bay.locator('.row-cell').first())
  })
})
