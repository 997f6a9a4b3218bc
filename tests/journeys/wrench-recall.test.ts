import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { freeMoor } from '../support/free-vehicles.ts'
import { writeOrderInFlight } from '../support/order-in-flight.ts'
import { violationsOn } from './support/accessible.ts'
import { signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

/** An order of the demo whose wheels are torqued with W-07. */
const browser = setStage(null, async ({ serviceUrl }) => {
  await writeOrderInFlight(
    serviceUrl,
    { ...freeMoor, number: 'T-2603' },
    ({ draft }) => draft.kind === 'sensor.programmed',
    ({ closedBy }) => closedBy === 'torque.checked',
  )
})

describe('a wrench that is found out of calibration', () => {
  let owner: Page
  beforeAll(async () => {
    owner = await browser().open('desk', '/desk/sign-in')
    await signInAtDesk(owner, 'marguerite', 'brindle-falls-marguerite')
  })
  const button = (name: string | RegExp) => owner.getByRole('button', { name })

  it('is found on the owner’s pages, which say what is overdue', async () => {
    onTestFailed(() => browser().picture('out'))
    await owner.getByRole('link', { name: 'The shop', exact: true }).click()
    await owner.getByRole('link', { name: /^Wrenches and gauges.*overdue: W-05/ }).click()
    await owner.getByRole('heading', { name: 'Wrenches and gauges' }).waitFor()
    await owner.getByLabel('Search').fill('torque W-0')
    await owner.getByText('3 of 5 wrenches and gauges.').waitFor()
    expect(await violationsOn(owner)).toEqual([])
    await button(/^W-07, torque wrench/).click()
  })

  it('lists every wheel torqued with it since a day, and whom the shop may call', async () => {
    onTestFailed(() => browser().picture('out'))
    await owner.getByLabel('Torqued on this day or since').fill('2026-01-01')
    await owner.getByText(/^\d+ wheels of \d orders\.$/).waitFor()
    const row = owner.getByRole('row', {
      name: /V\. Larkin-Stowe: may be called/,
    })
    expect(await row.count()).toBeGreaterThan(0)
    expect(await violationsOn(owner)).toEqual([])
  })

  it('goes into quarantine with a reason that cannot be left out, by keys alone', async () => {
    onTestFailed(() => browser().picture('out'))
    await owner.getByRole('radio', { name: 'no, it is in quarantine' }).focus()
    await owner.keyboard.press('Space')
    await button('Save').focus()
    await owner.keyboard.press('Enter')
    await owner.getByText('Fill this in.').waitFor()
    const why = owner.getByLabel('Why it is in quarantine')
    expect(await why.evaluate((element) => element === document.activeElement)).toBe(true)
    await owner.keyboard.type('Clicks at 92 where 83 is set.')
    await owner.keyboard.press('Enter')
    await owner.getByText('Saved. This is version 2.').waitFor()
    await owner.getByText('May it be used: yes → no, it is in quarantine').waitFor()
    expect(await violationsOn(owner)).toEqual([])
  })

  it('is written back as it was from its history', async () => {
    onTestFailed(() => browser().picture('out'))
    await button('Write version 1 again').click()
    await owner.getByText('Saved. This is version 3.').waitFor()
    await owner.getByText('May it be used: no, it is in quarantine → yes').waitFor()
  })

  it('shows both versions where another owner saved first, and keeps what was typed', async () => {
    onTestFailed(() => browser().picture('out'))
    const other = await browser().open('desk', '/desk/sign-in')
    await signInAtDesk(other, 'marguerite', 'brindle-falls-marguerite')
    await other.goto(owner.url())
    await other.getByLabel('Certificate').fill('C-3000')
    await owner.getByLabel('Certificate').fill('C-2000')
    await other.getByRole('button', { name: 'Save' }).click()
    await other.getByText('Saved. This is version 4.').waitFor()
    await button('Save').click()
    await owner.getByRole('region', { name: 'Both versions' }).waitFor()
    expect(await owner.getByRole('row', { name: /Certificate C-2000 C-3000/ }).count()).toBe(1)
    expect(await violationsOn(owner)).toEqual([])
    await button('Save what you typed over it').click()
    await owner.getByText('Saved. This is version 5.').waitFor()
    expect(await owner.getByLabel('Certificate').inputValue()).toBe('C-2000')
  })
})
