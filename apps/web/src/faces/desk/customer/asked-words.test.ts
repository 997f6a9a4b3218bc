import { type AgreedChoice, AskedChannel, AskedPurpose } from '@bayledger/contract/messages'
import { expect, it } from 'vitest'
import { askedWords, isToBeAsked } from './asked-words.ts'

const now = '2026-11-30T15:00:00.000Z'
const clock = { timeZone: 'America/New_York' }
const choices = (askedAt: string | null, allowed: boolean): AgreedChoice[] =>
  AskedPurpose.options.flatMap((purpose) =>
    AskedChannel.options.map((channel) => ({
      purpose,
      channel,
      allowed: allowed && channel === 'call' && purpose !== 'deferred',
      askedAt,
    })),
  )

it('says that nobody asked yet, and what the card says', () => {
  const never = choices(null, true)
  expect(askedWords(never, now, clock)).toEqual([
    'May be called about the vehicle that is here, the torque check, a recalled part of ours.',
    'Never asked by purpose: it is what the card says.',
  ])
  expect(isToBeAsked(never, Date.parse(now))).toBe(true)
})

it('says from when an answer is, and that one of more than a year ago is to be asked for again', () => {
  const lately = choices('2026-03-03T15:00:00.000Z', false)
  expect(askedWords(lately, now, clock)).toEqual(['Agrees to no call and no message.', 'Asked Mar 3.'])
  expect(isToBeAsked(lately, Date.parse(now))).toBe(false)
  const long = choices('2025-11-29T15:00:00.000Z', false)
  expect(askedWords(long, now, clock).at(-1)).toBe('Asked Nov 29, 2025.')
  expect(isToBeAsked(long, Date.parse(now))).toBe(true)
})

it('says where only a part of it was asked for', () => {
  const [first, ...others] = choices('2026-11-01T15:00:00.000Z', true)
  const partly = first ? [{ ...first, askedAt: null }, ...others] : []
  expect(askedWords(partly, now, clock).at(-1)).toBe('Not asked about all of it yet.')
  expect(isToBeAsked(partly, Date.parse(now))).toBe(true)
})
