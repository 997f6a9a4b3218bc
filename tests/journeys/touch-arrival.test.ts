import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { button, checkArrival, names, shows, type } from './support/bay.ts'
import { takeForArrival } from './support/begin.ts'
import { wheels } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { centerOf, handOf, slowNetwork, tap } from './support/touch.ts'

const browser = setStage()

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

describe('the arrival check by touch, with the server 700 ms away', () => {
  let bay: Page
  beforeAll(async () => {
    bay = (await takeForArrival(browser())).bay
    await slowNetwork(bay, 700)
  })

  it('takes 70 touches at most, and every figure is written at the wheel that the screen showed', async () => {
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
    await type(bay, '33.4')
    await shows(bay, /readings say/)
    const checked = await written(bay, 'wheel.checked', 11)
    expect(checked.slice(-2)).toMatchObject([
      { wheel: 'LF', gauge: { pressure: { value: 32.1 } } },
      { wheel: 'RF', gauge: { pressure: { value: 33.4 } } },
    ])
    expect(await bay.getByText(names.RF).count()).toBeGreaterThan(0)
  })
})
