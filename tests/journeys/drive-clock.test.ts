import type { Entry } from '@bayledger/ledger/entry'
import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { allSent, button, ines, shows, type, unlock } from './support/bay.ts'
import { openBay } from './support/begin.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

/** Over both drives the tablet's clock gets nine minutes ahead of the server's, which it may. */
const browser = setStage(0)

/** A demo vehicle of whose proof drive 13 of 20 minutes are driven. */
const vehicle = /C\. Abernethy-Wu/

const minute = 60_000

describe('a proof drive by the clock of the tablet', () => {
  let bay: Page
  const drives = async (): Promise<Entry[]> => {
    const orderId = /[0-9a-f-]{36}/.exec(bay.url())?.[0] ?? ''
    return (await browser().desk.entriesOf(orderId)).filter(({ kind }) => kind === 'drive.done')
  }
  const leave = async (odometer: string) => {
    await type(bay, odometer)
    await tap(button(bay, 'Leave: start the clock'))
    await button(bay, 'Back: stop the clock').waitFor()
  }
  const back = async () => {
    await unlock(bay, ines)
    await tap(button(bay, 'Back: stop the clock'))
  }
  const recordWith = async (odometer: string) => {
    await type(bay, odometer)
    await tap(button(bay, /^Next/))
    await tap(button(bay, 'Off', true))
    await tap(button(bay, /^Lights and goes/))
  }

  beforeAll(async () => {
    bay = await openBay(browser())
    await shows(bay, 'My vehicles')
    await tap(bay.getByRole('link', { name: vehicle }))
    await button(bay, 'Leave: start the clock').waitFor()
  })

  it('is refused when it is longer than the order is old, with both figures, and nothing is closed', async () => {
    onTestFailed(() => browser().picture('out'))
    const before = await drives()
    await tap(button(bay, 'Driven without this tablet'))
    await tap(button(bay, 'I have read it: go on'))
    await type(bay, '71947')
    await tap(button(bay, /^Next/))
    await type(bay, '600')
    await tap(button(bay, /^Next/))
    await recordWith('71949')
    const refusal = bay.getByRole('alert').filter({ hasText: /not taken into the ledger/ })
    await refusal.waitFor()
    expect(await refusal.textContent()).toMatch(/600 minutes is longer than this order is open: \d+ minutes/)
    // The form stays as it was filled in, and the step is open.
    await button(bay, 'Record the drive').first().waitFor()
    expect(await bay.locator('.row-cells').textContent()).toContain('600 min')
    expect(await drives()).toEqual(before)
    await tap(button(bay, 'Use the clock'))
    await button(bay, 'Leave: start the clock').waitFor()
  })

  it('goes on while the tablet is reloaded, and ends on Back', async () => {
    onTestFailed(() => browser().picture('out'))
    await leave('71947')
    await bay.clock.fastForward(minute)
    await allSent(bay)
    await bay.reload()
    await button(bay, 'Back: stop the clock').waitFor()
    await bay.clock.fastForward(minute)
    await tap(button(bay, 'Back: stop the clock'))
    await bay.getByText(/^2 min$/).waitFor()
  })

  it('keeps minutes as typed that the clock contradicts, and is not proven by them', async () => {
    onTestFailed(() => browser().picture('out'))
    await tap(button(bay, /^Driven/))
    await tap(button(bay, 'erase the last digit'))
    await type(bay, '9')
    await tap(button(bay, /^Next/))
    await recordWith('71949')
    await button(bay, 'Leave: start the clock').waitFor()
    await expect.poll(drives).toHaveLength(2)
    expect((await drives()).at(-1)).toMatchObject({
      payload: { minutes: 9, timed: { seconds: expect.any(Number) } },
      given: {
        holds: [{ code: 'drive-minutes-doubtful', values: { typed: 9, clock: 2, by: 'timed' } }],
      },
    })
    await bay
      .getByText(/the minutes that were written down for the drive and those of the clock differ/)
      .waitFor()
  })

  it('is proven by the clock when the rest is driven', async () => {
    onTestFailed(() => browser().picture('out'))
    await leave('71949')
    await bay.clock.fastForward(7 * minute)
    await back()
    await bay.getByText(/^7 min$/).waitFor()
    await recordWith('71953')
    await shows(bay, /^See that the vehicle learned/)
    // The screen goes on at once; the ledger follows.
    await expect
      .poll(async () => (await drives()).at(-1))
      .toMatchObject({ payload: { minutes: 7 }, given: {} })
  })
})
