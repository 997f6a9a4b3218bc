import { english } from '@bayledger/wording/en/english'
import { expect, it } from 'vitest'
import { ownWordsSections } from './own-words-section.ts'

type Context = Parameters<typeof ownWordsSections>[0]
const context = (says?: NonNullable<Context['shop']['says']>): Context =>
  ({
    language: english,
    shop: { name: 'Corner Tire', lines: [], telephone: null, ...(says ? { says } : {}) },
  }) as unknown as Context

it('prints what the shop wrote under the shop’s own name, line by line, cautions first', () => {
  expect(ownWordsSections(context({ cautions: 'Ask us.\n\nAgain.', reportFooter: 'Thank you.' }))).toEqual([
    {
      title: 'Corner Tire adds',
      blocks: ['Ask us.', 'Again.', 'Thank you.'].map((text) => ({ kind: 'paragraph', text, entry: null })),
    },
  ])
})

it('is no section where the shop has written nothing', () => {
  expect(ownWordsSections(context())).toEqual([])
  expect(ownWordsSections(context({ cautions: null, reportFooter: null }))).toEqual([])
})
