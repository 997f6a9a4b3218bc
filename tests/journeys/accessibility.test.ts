import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { violationsOn } from './support/accessible.ts'
import { button, enroll, heading, ines, shows, signIn } from './support/bay.ts'
import { customerLink, enrollmentCode, openOrder, signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

const browser = setStage()

describe('the desk', () => {
  let desk: Page
  beforeAll(async () => {
    desk = await browser().open('desk', '/desk/sign-in')
    await desk.getByLabel('Sign-in name').waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
  })

  it('has no violations on an order sheet, waiting and finished', async () => {
    for (const customer of ['W. Dunmore-Gray', 'H. Castellane', 'P. Lindqvist-Roe']) {
      await openOrder(desk, customer)
      expect(await violationsOn(desk), customer).toEqual([])
    }
  })

  it.each(['/desk', '/desk/write-up', '/desk/tablets', '/desk/refused', '/desk/nowhere'])(
    'has none on %s',
    async (path) => {
      await desk.goto(path)
      await desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
      expect(await violationsOn(desk)).toEqual([])
    },
  )

  it('reaches the search box by the key / and every field of a write-up by Tab', async () => {
    await desk.goto('/desk')
    await desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
    await desk.keyboard.press('/')
    expect(await desk.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('combobox')
    await desk.goto('/desk/write-up')
    await desk.getByLabel('Customer’s name').waitFor()
    await desk.getByLabel('Customer’s name').focus()
    const reached = new Set<string>()
    for (let presses = 0; presses < 60; presses += 1) {
      reached.add(
        await desk.evaluate(
          () =>
            (document.activeElement as HTMLInputElement | null)?.labels?.[0]?.textContent ??
            document.activeElement?.textContent ??
            '',
        ),
      )
      await desk.keyboard.press('Tab')
    }
    for (const label of [
      'Customer’s name',
      'Telephone',
      'Plate',
      'VIN',
      'Specification sheet',
      'Promised by',
      'Odometer',
      'Open the order',
    ])
      expect(
        [...reached].some((text) => text.includes(label)),
        label,
      ).toBe(true)
  })
})

describe('the bay', () => {
  it('has no violations on enrolling, names, vehicles and a step, in both looks', async () => {
    const desk = await browser().open('desk', '/desk')
    const bay = await browser().open('bay', '/bay/enroll')
    await bay.getByLabel('Code from the desk').waitFor()
    expect(await violationsOn(bay)).toEqual([])
    await enroll(bay, await enrollmentCode(desk))
    await button(bay, ines.name).waitFor()
    expect(await violationsOn(bay)).toEqual([])
    await signIn(bay, ines)
    await shows(bay, 'My vehicles')
    expect(await violationsOn(bay)).toEqual([])
    await bay.getByRole('link', { name: /S\. Achterberg/ }).click()
    await heading(bay).waitFor()
    await button(bay, 'Job plan').waitFor()
    expect(await violationsOn(bay)).toEqual([])
    await button(bay, 'Bright look').click()
    expect(await violationsOn(bay)).toEqual([])
    await button(bay, 'Dark look').waitFor()
  })

  it('offers nothing to touch that is smaller than 18 mm', async () => {
    const bay = await browser().open('bay', '/bay')
    await shows(bay, 'My vehicles')
    await bay.getByRole('link', { name: /S\. Achterberg/ }).click()
    await button(bay, 'Job plan').waitFor()
    const small = await bay.evaluate(() =>
      [...document.querySelectorAll('button, a[href], input')].flatMap((target) => {
        const { width, height } = target.getBoundingClientRect()
        return width > 0 && Math.min(width, height) < 68 ? [`${target.textContent} ${width}×${height}`] : []
      }),
    )
    expect(small).toEqual([])
  })
})

describe('the customer’s page', () => {
  it('has no violations before the answer, after a No, and where a report is checked', async () => {
    const desk = await browser().open('desk', '/desk')
    await openOrder(desk, 'W. Dunmore-Gray')
    const link = new URL(await customerLink(desk))
    const phone = await browser().open('customer', link.pathname + link.hash)
    await phone.getByRole('heading', { name: 'What it costs' }).waitFor()
    expect(await violationsOn(phone)).toEqual([])
    await phone.getByRole('radio', { name: 'No', exact: true }).first().check()
    expect(await violationsOn(phone)).toEqual([])
    await phone.goto('/check')
    await phone.getByRole('heading', { name: 'Is this report genuine?' }).waitFor()
    expect(await violationsOn(phone)).toEqual([])
  })
})
