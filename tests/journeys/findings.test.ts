import type { Page } from 'playwright-core'
import { describe, expect, it, onTestFailed } from 'vitest'
import { tabTo, violationsOn } from './support/accessible.ts'
import { button, checkArrival, leaves, shows } from './support/bay.ts'
import { takeForArrival } from './support/begin.ts'
import { customerLink, issueEstimate, openOrder } from './support/desk.ts'
import { customer, wheels } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

const browser = setStage()

/** Opens the first finding with the keyboard only. */
const openFirst = async (page: Page) => {
  const summary = page.locator('.finding > summary').first()
  await summary.focus()
  await page.keyboard.press('Enter')
  await page.locator('.finding-evidence').first().waitFor()
}

describe('findings', () => {
  it('open to their evidence, lead to the next check, and are shown beside a technician’s own', async () => {
    onTestFailed(() => browser().picture('out'))
    const { desk, bay } = await takeForArrival(browser())
    await checkArrival(bay, wheels, '27')

    await shows(bay, /readings say/)
    await bay.getByText('Sensor does not answer: right rear').waitFor()
    await bay.getByText(/\d+ more facts can still be read/).waitFor()
    await openFirst(bay)
    expect(await bay.locator('.finding-evidence').first().textContent()).toMatch(/right rear: Cause, silent/)
    expect(await violationsOn(bay)).toEqual([])

    // What is worth checking next opens at its own row; the findings come back when the wheel is looked at again.
    const asked = (await button(bay, /^Check next:/).textContent()) ?? ''
    await tap(button(bay, /^Check next:/))
    await leaves(bay, 'What the readings say')
    expect(await bay.locator('.row-cell[aria-current]').count(), asked).toBe(1)
    await tap(button(bay, /^left front/i))
    await tap(button(bay, 'Tire', true))
    await shows(bay, 'Look at the left front tire')
    await tap(button(bay, /^Not all/))
    await tap(button(bay, 'Leaks'))
    // A tire may be harmed in two ways at once.
    for (const one of ['Puncture', 'Run-low dust']) await tap(button(bay, one, true))
    expect(await bay.locator('.row-option[aria-pressed="true"]').count()).toBe(2)
    for (const one of [/^Puncture/, /^Run-low dust/]) await tap(bay.locator('.row-option', { hasText: one }))
    await tap(bay.locator('.row-option', { hasText: 'No damage' }))
    await tap(bay.locator('.row-option', { hasText: 'All sound' }))
    await tap(button(bay, '7', true))
    await shows(bay, /readings say/)
    expect(await bay.locator('.severity-word').allTextContents()).toEqual([
      'Repair before release',
      'Cause',
      'Not checked',
    ])

    // A check that cannot be made is skipped with a reason, by keys alone, and another one is called for.
    const first = (await button(bay, /^Check next:/).textContent()) ?? ''
    await button(bay, 'Skip this check').focus()
    await bay.keyboard.press('Enter')
    await shows(bay, 'Skip this check: why?')
    expect(await bay.evaluate(() => document.activeElement?.textContent)).toBe('Skip this check: why?')
    expect(await violationsOn(bay)).toEqual([])
    await tabTo(bay, 'it cannot be reached now')
    await bay.keyboard.press('Enter')
    await shows(bay, /readings say/)
    await bay
      .getByText(/: it cannot be reached now$/)
      .first()
      .waitFor()
    expect(await button(bay, /^Check next:/).textContent()).not.toBe(first)

    await button(bay, 'I see it otherwise').click()
    await bay.getByRole('textbox', { name: 'My finding' }).fill('A bent antenna ring at the right rear')
    await button(bay, /^Next/).click()
    await bay.getByRole('textbox', { name: 'My reason' }).fill('Seen with my own eyes')
    await button(bay, 'Record my own finding').click()
    await shows(bay, /Nothing for the bay now|Waiting/)

    await openOrder(desk, customer)
    const findings = desk.locator('#findings')
    await findings.getByText('A bent antenna ring at the right rear').waitFor()
    const text = (await findings.textContent()) ?? ''
    expect(text).toContain('Ines Halloran-Voss finds otherwise')
    expect(text).toContain('Seen with my own eyes')
    expect(text).toContain('Sensor does not answer: right rear')
    await openFirst(desk)
    await findings
      .getByText(/no wheel|the keys stay here|not driven on the road/)
      .first()
      .waitFor()
    await button(desk, 'What today’s rules would say').click()
    await findings.getByText(/which is today’s\. From the same evidence .* nothing differs/).waitFor()
    expect(await violationsOn(desk)).toEqual([])

    await issueEstimate(desk)
    const link = new URL(await customerLink(desk))
    const phone = await browser().open('customer', link.pathname + link.hash)
    await phone.getByRole('heading', { name: 'What it costs' }).waitFor()
    expect((await phone.locator('.severity-word').allTextContents()).slice(-2)).toEqual([
      'To be repaired before it leaves',
      'The cause',
    ])
    const headings = await phone.getByRole('heading', { level: 2 }).allTextContents()
    expect(headings.slice(0, 4)).toEqual([
      'Can I drive it?',
      'What is dangerous',
      'The warning light',
      'What it costs',
    ])
    const dangerous = phone.getByRole('region', { name: 'What is dangerous' })
    expect(await dangerous.textContent()).toMatch(/What removes it: .+ with tax\. You have not answered\./)
    await phone.getByText('A Yes to other work does not make the vehicle safe to drive.').waitFor()
    await phone.getByText(/Our technician sees the cause otherwise/).waitFor()
    expect(await violationsOn(phone)).toEqual([])
  }, 120_000)
})
