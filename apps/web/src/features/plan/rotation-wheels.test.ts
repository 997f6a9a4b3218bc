import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../../../../packages/ledger/test-support/one-sensor-job.ts'
import { rotationWheels } from './rotation-wheels.ts'

const texts = (wheel: { lines: readonly { text: string; unit?: string }[] } | undefined) =>
  wheel?.lines.map(({ text, unit }) => (unit === undefined ? text : `${text} ${unit}`))

const worked = oneSensorJob('written-up').state()
const { arrival } = worked
const tread = (wheel: 'LF' | 'RR', treadDepth32nds: number) => {
  const tire = oneSensorJob('handed-back').state().arrival.tires.RR
  if (!tire) throw new RangeError('the job has a tire that was looked at')
  return { [wheel]: { ...tire, treadDepth32nds } }
}
const state = {
  ...worked,
  arrival: { ...arrival, tires: { ...tread('LF', 6), ...tread('RR', 8) } },
}

describe('a rotation as it is drawn', () => {
  const { moves, before, after } = rotationWheels(state, 'cross')

  it('shows before each wheel with its tread and the place to which it goes', () => {
    expect(moves).toEqual({ LF: 'RR', RR: 'LF', RF: 'LR', LR: 'RF' })
    expect(texts(before.LF)?.slice(0, 2)).toEqual(['6 /32 in', 'to RR'])
    expect(texts(before.LR)?.slice(0, 2)).toEqual(['no tread read', 'to RF'])
    expect(before.LF?.label).toMatch(/^left front: goes to right rear, tread 6\/32 in/)
  })

  it('shows after it at each place the wheel that came, its tread, and the place’s own pressure', () => {
    const psi = state.sheet?.sheet.placard
    const rear = psi === 'missing' ? undefined : psi?.rear.psi
    expect(texts(after.RR)).toEqual(['LF', '6/32 in', `${rear} psi`])
    expect(texts(after.LF)?.slice(0, 2)).toEqual(['RR', '8/32 in'])
    expect(after.RR?.label).toMatch(/^right rear: the wheel from left front, tread 6\/32 in/)
  })

  it('draws the spare only where it takes part, and says where a wheel stays', () => {
    expect(before.SP).toBeUndefined()
    const five = rotationWheels(state, 'five-rearward-cross')
    expect(texts(five.before.SP)).toContain('to RR')
    expect(texts(five.after.SP)?.[0]).toBe('LF')
  })
})
