import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { focused, isOnTop, smallTargets, tabTo, violationsOn, violationsOnNew } from './support/accessible.ts'
import { button, enroll, heading, ines, leaves, shows, signIn } from './support/bay.ts'
import { customerLink, enrollmentCode, openOrder, signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

const browser = setStage()

describe('the desk', () => {
  let desk: Page
  let owner: Page
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
    // The history of the finished one names each step.
    await desk.getByRole('link', { name: 'Step done: Last look around the vehicle' }).waitFor()
  })

  it('keeps fifteen vehicles on a screen, each in at most two lines', async () => {
    const rows = desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link')
    const heights = await rows.evaluateAll((links) =>
      links.map((link) => link.getBoundingClientRect().height),
    )
    const heads = await desk
      .getByRole('complementary', { name: 'Floor list' })
      .getByRole('heading', { level: 3 })
      .evaluateAll((all) => all.map((head) => head.getBoundingClientRect().height))
    const listed = (await desk.getByRole('complementary', { name: 'Floor list' }).boundingBox())?.height ?? 0
    const sum = (numbers: number[]) => numbers.reduce((total, one) => total + one, 0)
    expect(15 * Math.max(...heights) + (sum(heads) / heads.length) * 4).toBeLessThanOrEqual(listed)
  })

  it('goes from the list to the sheet; its head says what is next, and its button goes there and opens it', async () => {
    await openOrder(desk, 'R. Ilves-Thorn')
    await expect.poll(() => focused(desk)).toContain('Vantrell Linnet')
    // Settled parts are a line, and an entry of the history opens its part.
    const complaint = desk.getByRole('button', { name: 'Complaint', exact: true })
    await complaint.waitFor()
    expect(await complaint.getAttribute('aria-expanded')).toBe('false')
    await desk.getByRole('complementary', { name: 'Ledger' }).getByRole('link', { name: 'Complaint' }).focus()
    await desk.keyboard.press('Enter')
    await desk.getByText('Warning light, as reported').waitFor()
    expect(await complaint.getAttribute('aria-expanded')).toBe('true')
    // More, its first edit, and Enter in a field: the dialog begins at its first field and saves by itself.
    await tabTo(desk, 'More')
    await desk.keyboard.press('Enter')
    await tabTo(desk, 'Edit the customer')
    await desk.keyboard.press('Enter')
    const name = desk.getByLabel('Name', { exact: true })
    await expect.poll(() => name.evaluate((field) => field === document.activeElement)).toBe(true)
    await desk.keyboard.press('Enter')
    await name.waitFor({ state: 'detached' })
    // The button beside the sentence does what the sentence says.
    await tabTo(desk, 'Show it by link')
    await desk.keyboard.press('Enter')
    await desk.getByRole('dialog').waitFor()
    await desk.keyboard.press('Escape')
    await desk.getByRole('dialog').waitFor({ state: 'detached' })
  })

  it('shows one pane at 200 % zoom, skips to the sheet by a key, and is dark where the device is', async () => {
    await desk.setViewportSize({ width: 640, height: 400 })
    await desk.emulateMedia({ colorScheme: 'dark' })
    await desk.getByRole('complementary', { name: 'Floor list' }).waitFor({ state: 'hidden' })
    expect(await violationsOn(desk)).toEqual([])
    expect(await desk.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true)
    await tabTo(desk, 'Skip to the sheet')
    await desk.keyboard.press('Enter')
    await expect.poll(() => desk.evaluate(() => document.activeElement?.tagName)).toBe('MAIN')
    await desk.getByRole('link', { name: 'Floor list' }).click()
    await desk.getByRole('complementary', { name: 'Floor list' }).waitFor()
    await desk.setViewportSize({ width: 1280, height: 800 })
    await desk.emulateMedia({ colorScheme: 'light' })
  })

  it('says what to tell the customer when a promise slips, and keeps the new one', async () => {
    await openOrder(desk, 'T. Brightwater')
    await button(desk, 'Tell the customer').click()
    await desk.getByText(/will be ready later than we said/).waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await button(desk, 'Called them').click()
    await button(desk, 'Tell the customer').waitFor({ state: 'detached' })
    await desk
      .getByRole('complementary', { name: 'Ledger' })
      .getByText('Customer contacted')
      .first()
      .waitFor()
  })

  it('draws the owner’s numbers as tables that open to their orders', async () => {
    owner = await browser().open('desk', '/desk/sign-in')
    await signInAtDesk(owner, 'marguerite', 'brindle-falls-marguerite')
    await owner.goto('/desk/shop/numbers')
    const causes = owner.getByRole('region', { name: 'What was found?' })
    await causes.getByRole('table').waitFor()
    expect(await violationsOn(owner)).toEqual([])
    await causes
      .getByRole('button', { name: /^\d+ orders?: / })
      .first()
      .click()
    await causes.getByRole('link', { name: /^T-/ }).first().waitFor()
  })

  it('has none in the dark: on each of the shop’s pages, on the wall and on what is printed', async () => {
    await owner.emulateMedia({ colorScheme: 'dark' })
    const known = new Set<string>()
    const pages = owner.getByRole('navigation', { name: 'The shop’s pages' }).locator('.shop-line-name')
    await pages.first().waitFor()
    const names = await pages.allTextContents()
    expect(names.length).toBeGreaterThan(12)
    for (const name of names) {
      await pages.getByText(name, { exact: true }).click()
      await owner.getByRole('heading', { level: 1, name, exact: true }).waitFor()
      await owner.locator('.shop-page :is(button, input, a)').first().waitFor()
      expect(await violationsOnNew(owner, known), name).toEqual([])
    }
    const orderId = /orders\/([\w-]+)/.exec(desk.url())?.[1] ?? ''
    for (const path of ['wall', `print/work/${orderId}`, `print/receipt/${orderId}`]) {
      await owner.goto(`/desk/${path}`)
      await owner
        .getByText(/T-\d{4}/)
        .first()
        .waitFor()
      expect(await violationsOnNew(owner, known), path).toEqual([])
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

  it('finds a customer by keys alone: / reaches the box, arrows choose, Enter opens, Escape closes', async () => {
    await desk.goto('/desk')
    await desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
    await desk.keyboard.press('/')
    const box = desk.getByRole('combobox', { name: 'Find' })
    expect(await box.evaluate((element) => element === document.activeElement)).toBe(true)
    await desk.keyboard.type('dunmore')
    await desk
      .getByRole('option', { name: /Dunmore-Gray/ })
      .first()
      .waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await desk.keyboard.press('Escape')
    expect(await box.getAttribute('aria-expanded')).toBe('false')
    await desk.keyboard.press('ArrowDown')
    const chosen = desk.getByRole('option', { selected: true })
    expect(await box.getAttribute('aria-activedescendant')).toBe(await chosen.getAttribute('id'))
    await desk.keyboard.press('Enter')
    await desk.waitForURL(/\/desk\/orders\//)
    expect(await box.inputValue()).toBe('')
    // What is found lies over the head of the order, which stays in view.
    await desk.locator('.order-head').waitFor()
    await desk.keyboard.press('/')
    await desk.keyboard.type('dunmore')
    const found = desk.getByRole('option', { name: /Dunmore-Gray/ }).first()
    await found.waitFor()
    await expect.poll(() => isOnTop(found)).toBe(true)
    await desk.keyboard.press('Escape')
    await desk.getByRole('button', { name: 'More', exact: true }).click()
    await desk.getByRole('link', { name: 'The customer’s page' }).waitFor()
    await desk.getByRole('link', { name: 'The vehicle’s page' }).click()
    await desk.waitForURL(/\/desk\/vehicles\//)
  })

  it('shows all that is known of a vehicle, and a key begins the write-up of its comeback', async () => {
    const floor = await desk.evaluate(async () => (await fetch('/api/search?q=T-2605')).json())
    const [{ plate }] = floor.hits
    await desk.goto('/desk')
    await desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
    await desk.keyboard.press('/')
    await desk.keyboard.type(plate)
    await desk.getByRole('option', { name: new RegExp(plate) }).waitFor()
    await desk.keyboard.press('Enter')
    await desk.waitForURL(/\/desk\/vehicles\//)
    await desk.getByRole('heading', { name: 'Pressures' }).waitFor()
    await desk.getByRole('heading', { name: 'Our sensors' }).waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await desk.keyboard.press('n')
    await desk.waitForURL(/\/desk\/write-up\?/)
    await desk.getByLabel('The complaint, in the customer’s own words').waitFor()
  })

  it('keeps what is typed of a write-up over a reload, and at another desk', async () => {
    await desk.goto('/desk')
    await desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
    await desk.keyboard.press('/')
    await desk.keyboard.type('larkin')
    await desk
      .getByRole('option', { name: /Larkin-Stowe/ })
      .first()
      .waitFor()
    await desk.keyboard.press('Shift+Enter')
    await desk.waitForURL(/\/desk\/write-up\?customer=/)
    await desk.getByRole('button', { name: 'Another customer' }).waitFor()
    const words = desk.getByLabel('The complaint, in the customer’s own words')
    await words.fill('It came on by the river.')
    await desk.waitForURL(/draft=/)
    await expect
      .poll(() => desk.evaluate(async () => (await fetch('/api/write-up-drafts')).text()))
      .toContain('by the river')
    await desk.reload()
    await expect.poll(() => words.inputValue()).toBe('It came on by the river.')
    const other = await browser().open('desk', '/desk/sign-in')
    await signInAtDesk(other, 'devin', 'brindle-falls-devin')
    await other.goto('/desk/write-up')
    await other.getByRole('button', { name: /^Go on with .*Larkin-Stowe/ }).click()
    await expect
      .poll(() => other.getByLabel('The complaint, in the customer’s own words').inputValue())
      .toBe('It came on by the river.')
    await other.goto('/desk/write-up')
    await other.getByRole('button', { name: /^Throw away .*Larkin-Stowe/ }).click()
    await other.getByText('Begun and not opened').waitFor({ state: 'detached' })
    // A plate on file is shown before it is made twice, and taken with its owner.
    await other.getByLabel('Plate').fill('brf-91O4')
    await other.getByText('This plate is on file').waitFor()
    await other.getByRole('button', { name: /^Use this vehicle: BRF 9104/ }).click()
    await other.getByRole('button', { name: 'Another customer' }).waitFor()
    await other.getByRole('button', { name: 'Another vehicle' }).waitFor()
  })

  it('takes a whole write-up with Tab, Enter and typing only', async () => {
    await desk.goto('/desk/write-up')
    await desk.getByLabel('Customer’s name').waitFor()
    await tabTo(desk, 'Customer’s name')
    await desk.keyboard.type('V. Larki')
    await button(desk, /V\. Larkin-Stowe.*on file/).waitFor()
    await tabTo(desk, 'V. Larkin-Stowe')
    await desk.keyboard.press('Enter')
    await button(desk, /BRF 9104.*on file/).waitFor()
    await tabTo(desk, 'BRF 9104')
    await desk.keyboard.press('Enter')
    await tabTo(desk, 'The complaint, in the customer’s own words')
    await desk.keyboard.type('The tire light flashes, then it stays on.')
    for (const answer of [
      'Flashes for about a minute, then stays on',
      'I asked for each of these by name',
      'Waits here',
      'Millrace Road',
      'charged with or without work',
      'Inspecting every wheel',
      'A proof drive',
      'The owner',
    ]) {
      await tabTo(desk, answer)
      await desk.keyboard.press('Enter')
    }
    await tabTo(desk, 'Open the order')
    await desk.keyboard.press('Enter')
    await desk.getByRole('heading', { name: /V\. Larkin-Stowe/ }).waitFor()
    expect(await violationsOn(desk)).toEqual([])
  })

  it('says that a vehicle is here already, and keeps the keyboard where a button went away', async () => {
    await desk.keyboard.press('/')
    await desk.keyboard.type('BRF 9104')
    await desk.keyboard.press('Shift+Enter')
    await desk.getByText(/^T-\d+ is open for this vehicle/).waitFor()
    await tabTo(desk, 'Another vehicle')
    await desk.keyboard.press('Enter')
    const tag = () => desk.evaluate(() => document.activeElement?.tagName)
    await expect.poll(tag).toBe('INPUT')
    await tabTo(desk, 'Make, model and year')
    await desk.keyboard.type('Vantrell Linnet sedan 2019')
    await tabTo(desk, 'Is it a Vantrell Linnet sedan 2019?')
    await desk.keyboard.press('Enter')
    await expect.poll(tag).toBe('SELECT')
    expect(await violationsOn(desk)).toEqual([])
  })
})

describe('the bay', () => {
  it('has no violations on enrolling, names, and every vehicle’s step, plan, findings and entries', async () => {
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
    await bay.getByRole('link', { name: /S\. Achterberg/ }).waitFor()
    const vehicles = await bay
      .getByRole('link')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href')))
    expect(vehicles.length).toBeGreaterThan(4)
    const steps: string[] = []
    const known = new Set<string>()
    for (const vehicle of vehicles) {
      await bay.goto(vehicle ?? '')
      await button(bay, 'History', true).waitFor()
      expect(await violationsOnNew(bay, known), vehicle ?? '').toEqual([])
      for (const part of ['Job plan', 'Findings', 'History']) {
        // A vehicle whose estimate waits for its answer has no plan.
        if ((await button(bay, part, true).count()) === 0) continue
        await button(bay, part, true).click()
        await button(bay, 'Back to the step').waitFor()
        expect(await violationsOnNew(bay, known), `${vehicle} ${part}`).toEqual([])
        await button(bay, 'Back to the step').click()
        await button(bay, 'Back to the step').waitFor({ state: 'detached' })
      }
      // Not right is reached, read and left by keys at whatever step this vehicle is; the focus goes there and back.
      const notRight = button(bay, 'Not right', true)
      if ((await notRight.count()) === 0) continue
      steps.push((await heading(bay).textContent()) ?? '')
      await tabTo(bay, 'Not right')
      await bay.keyboard.press('Enter')
      await shows(bay, /^What is not right/)
      expect(await focused(bay)).toMatch(/^What is not right/)
      expect(await violationsOnNew(bay, known), `${vehicle} Not right`).toEqual([])
      await tabTo(bay, 'Nothing: back')
      await bay.keyboard.press('Enter')
      expect(await focused(bay)).toBe('Not right')
    }
    expect(new Set(steps).size, steps.join(', ')).toBeGreaterThan(4)
    await button(bay, 'Bright look').click()
    await button(bay, 'Dark look').waitFor()
    expect(await violationsOn(bay)).toEqual([])
  })

  it('parks a wheel by Tab and Enter only, in the order of the screen, and goes on at what is new', async () => {
    const bay = await browser().open('bay', '/bay')
    await shows(bay, 'My vehicles')
    await tabTo(bay, 'S. Achterberg')
    await bay.keyboard.press('Enter')
    await button(bay, 'Job plan').waitFor()
    const step = (await heading(bay).textContent()) ?? ''
    await tabTo(bay, 'Not right')
    await bay.keyboard.press('Enter')
    await shows(bay, /^What is not right/)
    // What is wrong is a named group of pressed or unpressed buttons; what is left out is said.
    const group = bay.getByRole('group', { name: 'What is wrong' })
    await group.waitFor()
    for (const key of ['Something is seized', 'Something else']) {
      await tabTo(bay, key)
      expect(await group.getByRole('button', { name: key, pressed: false }).count()).toBe(1)
    }
    await bay.keyboard.press('Enter')
    await tabTo(bay, 'What is wrong')
    await bay.keyboard.press('Enter')
    expect(await group.getByRole('button', { pressed: true }).textContent()).toContain('Something else')
    await tabTo(bay, 'Park the')
    await bay.keyboard.press('Enter')
    await bay
      .getByRole('status')
      .getByText(/wheel is parked: something else/i)
      .waitFor()
    await leaves(bay, step)
    expect(await focused(bay)).toBe(await heading(bay).textContent())
    expect(await violationsOn(bay)).toEqual([])
  })

  it('offers nothing to touch that is smaller than 18 mm', async () => {
    const bay = await browser().open('bay', '/bay')
    await shows(bay, 'My vehicles')
    await bay.getByRole('link', { name: /S\. Achterberg/ }).click()
    await button(bay, 'Job plan').waitFor()
    expect(await smallTargets(bay)).toEqual([])
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
