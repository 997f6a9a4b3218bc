import { customerLanguages } from '@bayledger/wording/customer-languages'
import { expect, it } from 'vitest'
import { linkMessage } from './link-message.ts'

const of = {
  ...{ name: 'D. {link}', vehicle: 'Linnet C', shop: 'Ours', telephone: null, lines: [] },
  link: 'https://shop.example/c#s3cret',
}
const none = { en: null, es: null }
const settings = [
  { kind: 'prices', body: {} },
  {
    kind: 'report-head',
    body: { messages: { estimate: { en: 'Dear {name}, your {vehicle}: {link}', es: null }, report: none } },
  },
]

it('is the shop’s own, filled in once, and takes no name for a place to fill in', () => {
  expect(linkMessage(settings, 'estimate', of, customerLanguages.en)).toBe(
    'Dear D. {link}, your Linnet C: https://shop.example/c#s3cret',
  )
})

it('is the usual one of the customer’s language where the shop has written none', () => {
  expect(linkMessage(settings, 'estimate', of, customerLanguages.es)).toMatch(/^Ours: qué encontramos/)
  expect(linkMessage(settings, 'report', of, customerLanguages.en)).toMatch(/^Ours: the report/)
  expect(linkMessage([], 'estimate', of, customerLanguages.en)).toMatch(/^Ours: what we found/)
})
