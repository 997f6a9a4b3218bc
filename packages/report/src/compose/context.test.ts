import { expect, it } from 'vitest'
import { reportContext } from '../../test-support/worked-context.ts'
import { type ReportContext, writtenMoment } from './context.ts'

const context: ReportContext = { ...reportContext, timeZone: 'America/New_York' }
const writtenAt = '2026-01-12T15:00:00.000Z'

it.each([
  ['2026-01-12T15:00:00.000Z', 'Jan 12, 2026, 10:00 AM'],
  ['2026-01-12T15:02:00.000Z', 'Jan 12, 2026, 10:00 AM'],
  ['2026-01-12T14:58:00.000Z', 'Jan 12, 2026, 10:00 AM'],
  [null, 'Jan 12, 2026, 10:00 AM'],
  ['2026-01-12T15:02:00.001Z', 'Jan 12, 2026, 10:00 AM by the device, received Jan 12, 2026, 10:02 AM'],
  ['2026-01-13T15:30:00.000Z', 'Jan 12, 2026, 10:00 AM by the device, received Jan 13, 2026, 10:30 AM'],
  ['2026-01-12T14:57:59.000Z', 'Jan 12, 2026, 10:00 AM by the device, received Jan 12, 2026, 9:57 AM'],
])('received at %s, the paper says "%s"', (receivedAt, words) => {
  expect(writtenMoment(context, { writtenAt, receivedAt })).toBe(words)
})
