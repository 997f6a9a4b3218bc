import { expect, it } from 'vitest'
import { linkMessage } from './link-message.ts'

const of = { name: 'D. {link}', vehicle: 'Linnet C', link: 'https://shop.example/c#s3cret' }
const settings = (body: unknown) => [
  { kind: 'prices', body: {} },
  { kind: 'report-head', body },
]

it('fills the shop’s message in once, and takes no name for a place to fill in', () => {
  expect(linkMessage(settings({ linkMessage: 'Dear {name}, your {vehicle}: {link}' }), of)).toBe(
    'Dear D. {link}, your Linnet C: https://shop.example/c#s3cret',
  )
})

it.each([[settings({ linkMessage: ' ' })], [settings({ lines: [] })], [settings(null)], [[]]])(
  'has none where the shop has written none: %j',
  (all) => {
    expect(linkMessage(all, of)).toBeNull()
  },
)
