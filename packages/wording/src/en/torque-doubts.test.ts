import type { Torque } from '@bayledger/reckoning/quantity'
import { stemTorqueDoubts, torqueDoubts } from '@bayledger/reckoning/torque/plausible-torque'
import { expect, it } from 'vitest'
import { torqueDoubtWords } from './torque-doubts.ts'

const onStud = (thread: string, torque: Torque) =>
  torqueDoubts(thread, torque).map((doubt) => torqueDoubtWords(doubt, torque, thread))

it('a torque that is usual in two units is compared with the unit of its source', () => {
  expect(onStud('M14×1.5', { value: 140, unit: 'lbf·ft' })).toEqual([
    '140 is usual for M14×1.5 in lbf·ft and in N·m: see which unit the source prints.',
  ])
})

it('a torque that would be usual in another unit asks whether that one was meant', () => {
  expect(onStud('M12×1.5', { value: 80, unit: 'N·m' })).toEqual([
    '80 N·m (59 lbf·ft) is outside the usual 65 to 115 lbf·ft for M12×1.5. Is it 80 lbf·ft?',
  ])
  expect(onStud('M12x1.5', { value: 100, unit: 'lbf·in' })).toEqual([
    '100 lbf·in (11.3 N·m) is outside the usual 65 to 115 lbf·ft for M12x1.5. Is it 100 lbf·ft or 100 N·m?',
  ])
})

it('a torque that is unusual in every unit is read again', () => {
  const torque = { value: 6, unit: 'lbf·in' } as const
  const words = stemTorqueDoubts('valve-core', torque).map((doubt) =>
    torqueDoubtWords(doubt, torque, 'a valve core'),
  )
  expect(words).toEqual([
    '6 lbf·in (0.7 N·m) is outside the usual 2 to 5 lbf·in for a valve core. Read the source again.',
  ])
})

it('a thread that cannot be read is entered first', () => {
  expect(onStud('M12', { value: 80, unit: 'lbf·ft' })).toEqual([
    expect.stringMatching(/^The thread "M12" cannot be read: it needs a metric thread with its pitch/),
  ])
})
