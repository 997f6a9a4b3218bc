import { expect, it } from 'vitest'
import { bay, before } from '../../../test-support/refusals/setting.ts'
import { parseDraft } from '../../draft.ts'
import { upcast } from '../../upcast.ts'

const readAs = (value: string | null) => {
  const { shopId, writtenBy, deviceId, ...envelope } = before('RR.tire.balance').draft(
    'step.closed',
    { stepKey: 'RR.tire.balance', value },
    bay,
  )
  const read = parseDraft({ ...envelope, version: 1 }, { shopId, writtenBy, deviceId })
  return read.ok && upcast(read.draft).payload
}
const figures = { shows: 'figures', balancedAgain: false }

it.each([
  ['0.25 oz left inside, 0.5 oz outside', { ...figures, unit: 'oz', inner: 0.25, outer: 0.5 }],
  ['5 g left inside, 0 g outside', { ...figures, unit: 'g', inner: 5, outer: 0 }],
  ['0 oz left, inner and outer', { ...figures, unit: 'oz', inner: 0, outer: 0 }],
  ['the machine shows no figure', { shows: 'no-figure' }],
  ['0.25 oz inside, 0.50 oz outside', '0.25 oz inside, 0.50 oz outside'],
  ['4 lbf·in', '4 lbf·in'],
  [null, null],
])('%s of the first version is read as %j', (written, value) => {
  expect(readAs(written)).toEqual({ stepKey: 'RR.tire.balance', value })
})

it('figures are no words for the first version', () => {
  const draft = before('RR.tire.balance').draft(
    'step.closed',
    { stepKey: 'RR.tire.balance', value: { shows: 'no-figure' } },
    bay,
  )
  const { shopId, writtenBy, deviceId, ...envelope } = draft
  expect(parseDraft({ ...envelope, version: 1 }, { shopId, writtenBy, deviceId })).toMatchObject({
    ok: false,
    faults: [{ field: 'payload.value' }],
  })
})
