import { customerLanguages } from '@bayledger/wording/customer-languages'
import { expect, it } from 'vitest'
import { linkMessage, printedLink } from './link-message.ts'

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

it('says on paper for how long it is good and whom to call then, in the customer’s language', () => {
  const withNumber = [{ kind: 'report-head', body: { telephone: '(555) 555-0100' } }]
  expect(printedLink(withNumber, 'estimate', of, customerLanguages.en)).toEqual([
    'Ours: what we found on your Linnet C, and your answer: https://shop.example/c#s3cret',
    'Nothing is done before you say yes. The link is good for a week. If it does not open any more, call us, (555) 555-0100.',
  ])
  expect(printedLink([], 'report', of, customerLanguages.es)[1]).toMatch(/sirve por una semana.*llámenos\.$/)
})
