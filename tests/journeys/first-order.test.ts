import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startBrowser, type TestBrowser } from '../support/browser.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'
import { cornerTire } from '../support/first-shop.ts'
import { type RunningService, startService } from '../support/start-service.ts'
import { tabTo, violationsOn } from './support/accessible.ts'

/** An owner with an empty database: the first page, the checklist, people, the first order, all by keyboard. */
let database: TestDatabase
let service: RunningService
let browser: TestBrowser
let desk: Page
beforeAll(async () => {
  database = await createTestDatabase('empty')
  service = await startService(
    { ownerUrl: database.url, serviceUrl: database.serviceUrl },
    null,
    'as-they-are',
    'none',
  )
  browser = await startBrowser(service.address)
  desk = await browser.open('desk', '/desk')
})
afterAll(async () => {
  await browser?.close()
  await service?.stop()
  await database?.drop()
})

const heading = (name: string | RegExp) => desk.getByRole('heading', { name })

/** Goes to a field by Tab and types into it. */
const typed = async (label: string, text: string): Promise<void> => {
  await tabTo(desk, label)
  await desk.keyboard.type(text)
}

/** Goes to a control by Tab and presses it. */
const pressed = async (words: string): Promise<void> => {
  await tabTo(desk, words)
  await desk.keyboard.press('Enter')
}

describe('an owner with an empty database', () => {
  it('makes the shop on the page that opens by itself', async () => {
    await heading('Make your shop').waitFor()
    await desk.getByLabel('Name of the shop').waitFor()
    expect(await violationsOn(desk)).toEqual([])
    const { shopName, placeName, altitudeFeet, owner } = cornerTire
    await typed('Name of the shop', shopName)
    await typed('Name of the place', placeName)
    await typed('Altitude', String(altitudeFeet))
    await typed('Your name', owner.name)
    await typed('Sign-in name', owner.signInName)
    await typed('Password', owner.password)
    await typed('Password again', owner.password)
    await typed('PIN', '123456')
    await desk.getByText(/count up or down are guessed at once/).waitFor()
    await desk.keyboard.press('ControlOrMeta+a')
    await desk.keyboard.type(owner.pin)
    await typed('PIN again', owner.pin)
    await desk.keyboard.press('Enter')
    await heading('Checklist').waitFor()
  })

  it('reads what the shop still needs and what stays shut without it', async () => {
    await desk.getByText('4 of 4 left.').waitFor()
    expect(await violationsOn(desk)).toEqual([])
    for (const name of ['People', 'Wrenches and gauges', 'Prices', 'A tablet'])
      await heading(`${name}: not yet`).waitFor()
    await desk.getByText(/arrival check stays shut/).waitFor()
  })

  it('adds a technician, who gets a PIN', async () => {
    await pressed('Add people and set their PINs')
    await heading('People').waitFor()
    await pressed('Add a person')
    await typed('Name', 'Pell Orrin')
    await typed('Sign-in name', 'pell')
    await tabTo(desk, 'technician')
    await desk.keyboard.press('Space')
    await pressed('Add a person')
    await heading('Pell Orrin').waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await typed('New PIN', '730164')
    await typed('New PIN again', '730164')
    await desk.keyboard.press('Enter')
    await desk.getByText('The PIN is set.').waitFor()
    await desk.getByText('PIN set: never → once').waitFor()
    await desk.goto('/desk/shop')
    await desk.getByText(/Now: 2 people, 1 technician or lead with a PIN/).waitFor()
  })

  it('opens the first order', async () => {
    await pressed('Write up a complaint')
    await heading('Write up a complaint').waitFor()
    await typed('Customer’s name', 'L. Amberly')
    await typed('Make, model and year', 'A gray hatchback')
    await pressed('No sheet of this kind: begin a blank one')
    await typed('The complaint, in the customer’s own words', 'The tire light came on this morning.')
    for (const answer of [
      'Flashes for about a minute, then stays on',
      'I asked for each of these by name',
      'Waits here',
      'charged with or without work',
      'Inspecting every wheel',
      'A proof drive',
      'The owner',
      'Open the order',
    ])
      await pressed(answer)
    await heading(/L\. Amberly/).waitFor()
    expect(await desk.locator('.order-head').textContent()).toContain('T-')
    expect(await violationsOn(desk)).toEqual([])
  })

  it('finds the first page gone afterwards', async () => {
    const page = await browser.open('desk', '/desk/first-shop')
    await page.getByText('The shop is made.').waitFor()
    expect(await page.getByRole('link', { name: 'Sign in at the desk' }).isVisible()).toBe(true)
    expect(await violationsOn(page)).toEqual([])
    await page.close()
    expect(browser.noise.filter((line) => !/401/.test(line))).toEqual([])
  })
})
