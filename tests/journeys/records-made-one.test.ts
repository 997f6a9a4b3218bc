import type { Customer } from '@bayledger/contract/customers'
import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { tabTo, violationsOn } from './support/accessible.ts'
import { signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

const stage = setStage()
let page: Page
let wrong: string

const customerId = async (name: string): Promise<string> => {
  const found = (await stage().desk.get(`/api/customers?q=${encodeURIComponent(name)}`)) as {
    customers: Customer[]
  }
  return found.customers[0]?.customerId ?? ''
}
const pressed = async (words: string): Promise<void> => {
  await tabTo(page, words)
  await page.keyboard.press('Enter')
}
const floor = () => page.getByRole('complementary', { name: 'Floor list' })

beforeAll(async () => {
  wrong = await customerId('S. Achterberg')
  page = await stage().open('desk', '/desk/sign-in')
  await signInAtDesk(page, 'ottoline', 'brindle-falls-ottoline')
  await page.goto(`/desk/customers/${await customerId('L. Fontaine-Reed')}`)
  await page.getByRole('heading', { name: 'L. Fontaine-Reed' }).waitFor()
})

describe('two records of one customer, by keyboard', () => {
  it('are shown side by side and made one, while an order of one of them is open', async () => {
    await pressed('This customer is on file twice')
    await page.getByLabel('Name or telephone number of the other record').waitFor()
    await page.keyboard.type('Achter')
    await page.getByRole('button', { name: /^S\. Achterberg/ }).waitFor()
    await pressed('S. Achterberg')
    await page.getByRole('group', { name: 'Telephone' }).waitFor()
    // The record that was picked is gone: the keyboard goes on at what becomes of the two.
    await page.waitForFunction(() => document.activeElement?.textContent?.includes('becomes part of it'))
    expect(await violationsOn(page)).toEqual([])
    await page.getByRole('group', { name: 'E-mail', exact: true }).getByRole('radio').first().focus()
    await page.keyboard.press('ArrowDown')
    await pressed('Make them one')
    await page.getByText(/^S\. Achterberg became part of L\. Fontaine-Reed: Ottoline Pask/).waitFor()
    await page.getByText('s.achterberg@example.com').waitFor()
    await floor().getByText('S. Achterberg').waitFor({ state: 'detached' })
    await page.goto(`/desk/customers/${wrong}`)
    await page.getByRole('heading', { name: 'L. Fontaine-Reed' }).waitFor()
  })

  it('are two again after one key', async () => {
    await pressed('Undo')
    await page.getByText(/Ottoline Pask undid it/).waitFor()
    await floor().getByText('S. Achterberg').first().waitFor()
    expect(await violationsOn(page)).toEqual([])
    await page.goto(`/desk/customers/${wrong}`)
    await page.getByRole('heading', { name: 'S. Achterberg' }).waitFor()
  })
})

describe('a person is erased by an owner', () => {
  it('after a look at what goes, what stays and what is in the way', async () => {
    page = await stage().open('desk', '/desk/sign-in')
    await signInAtDesk(page, 'marguerite', 'brindle-falls-marguerite')
    const id = await page.evaluate(async () => {
      const may = { mayText: false, mayEmail: false, mayCall: false }
      const card = { name: 'Quilla Farthingdale', phone: null, email: null, language: 'en', ...may }
      const reply = await fetch('/api/customers', {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'idempotency-key': crypto.randomUUID() },
        body: JSON.stringify(card),
      })
      return ((await reply.json()) as { customerId: string }).customerId
    })
    await page.goto(`/desk/customers/${wrong}`)
    await page
      .getByText(/^Order T-\d+ is open\.$/)
      .first()
      .waitFor()
    await page.goto(`/desk/customers/${id}`)
    await page.getByText('1 customer card').waitFor()
    await pressed('Reason for a hold')
    await page.keyboard.type('A claim')
    await pressed('Place a legal hold')
    await page.getByText('There is a legal hold on this customer: A claim').waitFor()
    await pressed('Lift the hold')
    await page.getByText(/Lifted by Marguerite Ashby-Bell/).waitFor()
    await page.getByRole('button', { name: 'Erase this person’s data' }).waitFor()
    await pressed('Erase this person’s data')
    await page.getByLabel('The person asked for it').check()
    await page.getByLabel('In person, by a document').check()
    expect(await violationsOn(page)).toEqual([])
    await pressed('Erase for good')
    await page.getByText(/^This person’s data were erased/).waitFor()
    await page.getByRole('heading', { name: 'Erased person' }).waitFor()
  })
})
