import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { button, enroll, ines, shows, signIn, type } from './support/bay.ts'
import { openDesk } from './support/begin.ts'
import { enrollmentCode, writeUp } from './support/desk.ts'
import { customer, plate } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { makeTablet, type Tablet } from './support/tablet.ts'
import { tap } from './support/touch.ts'

const browser = setStage()

let tablet: Tablet
let desk: Page
let bay: Page

beforeAll(async () => {
  desk = await openDesk(browser())
  const code = await enrollmentCode(desk)
  await writeUp(desk, { customer, plate, words: 'It flashes, then it stays on.' })
  tablet = makeTablet(new URL(desk.url()).origin)
  bay = await tablet.start()
  await bay.goto('/bay/enroll')
  await enroll(bay, code)
  await shows(bay, 'Who is here?')
  // A browser writes its cookies down every half minute; a tablet has been enrolled for longer than that.
  await tablet.shutDown()
  bay = await tablet.start()
  await bay.goto('/bay')
  await signIn(bay, ines)
  await tap(button(bay, `Take it: ${plate}`))
  await shows(bay, 'Note the temperatures')
})
afterAll(() => tablet.throwAway())

/** How often the order's ledger holds the temperatures. */
const temperaturesWritten = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const orderId = /[0-9a-f-]{36}/.exec(location.pathname)?.[0]
    const reply = await fetch(`/api/orders/${orderId}`, { headers: { 'bayledger-face': 'bay' } })
    const { entries } = (await reply.json()) as { entries: { kind: string }[] }
    return entries.filter(({ kind }) => kind === 'surroundings.recorded').length
  })

it('what was tapped without a network is there after the battery died, and goes to the ledger once', async () => {
  await bay.route('**/api/entries', (route) => route.abort())
  await type(bay, '27')
  await tap(button(bay, /^Next/))
  await tap(button(bay, /^Cold/))
  await tap(button(bay, 'Record the temperatures'))
  await shows(bay, 'Watch the warning light')
  // The offer to undo says that the tablet holds it.
  await button(bay, /^Undo/).waitFor()
  await tap(button(bay, /^Lights at key-on/))
  const address = bay.url()
  expect(await temperaturesWritten(bay)).toBe(0)
  await tablet.cutPower()

  bay = await tablet.start()
  await bay.goto(address)
  // Whether the sign-in outlived the battery depends on when the browser last wrote its cookies down.
  await shows(bay, /^(Who is here\?|Watch the warning light)$/)
  if (await bay.getByRole('heading', { name: 'Who is here?' }).count()) await signIn(bay, ines)
  await shows(bay, 'Watch the warning light')
  // Half filled in before the battery died, and still so.
  await bay.locator('.row-cell', { hasText: 'Lights at key-on' }).waitFor()
  await expect.poll(() => temperaturesWritten(bay), { timeout: 20_000 }).toBe(1)
  await bay.getByText(/Not yet sent/).waitFor({ state: 'detached' })
  expect(await temperaturesWritten(bay)).toBe(1)
})
