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
