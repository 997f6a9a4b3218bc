import { expect, it } from 'vitest'
import { arrivalOf, tireOf } from '../../test-support/one-sensor-job.ts'
import { replanned } from '../../test-support/refusals/setting.ts'
import { technician } from '../../test-support/shop.ts'
import { rotationRefused, sizesToSee } from './rotating-tires.ts'

const by = { by: technician }
const none = { arrows: [], sizes: {} }
const rotation = { kind: 'rotate', pattern: 'front-to-back' } as const
const sizeRead = (text: string) => ({ sizeSeen: { readable: true, text } }) as const

it('the size that was read on arrival counts, and only the others are asked for', () => {
  const pen = replanned([rotation])
  expect(sizesToSee(pen.state(), 'front-to-back')).toEqual(['LF', 'RF', 'RR', 'LR'])
  expect(rotationRefused(pen.state(), 'front-to-back', none)).toBeNull()
  pen.write('tire.inspected', tireOf('LF', sizeRead('225/65R17 102H')), by)
  expect(sizesToSee(pen.state(), 'front-to-back')).toEqual(['RF', 'RR', 'LR'])
  expect(rotationRefused(pen.state(), 'front-to-back', none)).toMatchObject({
    refusals: [
      { fault: 'size-differs', from: 'LR', to: 'LF' },
      { fault: 'size-differs', from: 'LF', to: 'LR' },
    ],
    allowed: [],
  })
})

it('a tire that replaces the one of the arrival is looked at anew', () => {
  const pen = replanned([rotation, { kind: 'fit-tire', wheel: 'LF' }])
  pen.write('tire.inspected', tireOf('LF', sizeRead('225/65R17 102H')), by)
  expect(sizesToSee(pen.state(), 'front-to-back')).toContain('LF')
  expect(rotationRefused(pen.state(), 'front-to-back', none)).toBeNull()
})

it('a temporary spare on the road takes no part', () => {
  const pen = replanned([rotation])
  pen.write('wheel.checked', { ...arrivalOf('RR'), mounted: 'temporary-spare' }, by)
  expect(rotationRefused(pen.state(), 'front-to-back', none)?.refusals).toEqual([
    { fault: 'temporary-spare', from: 'RR', to: 'RF', place: 'RR' },
    { fault: 'temporary-spare', from: 'RF', to: 'RR', place: 'RR' },
  ])
})
