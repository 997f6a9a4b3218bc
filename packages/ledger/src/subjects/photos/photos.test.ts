import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../../test-support/one-sensor-job.ts'
import { photo } from '../../../test-support/photo.ts'
import { advisor, technician } from '../../../test-support/shop.ts'
import { parseDraft } from '../../draft.ts'
import { readySteps } from '../../questions/gates.ts'

const bay = { by: technician }

describe('a photo', () => {
  it('of a step closes no step, and is taken before the step is due and after it is closed', () => {
    const pen = oneSensorJob('decided')
    const ready = readySteps(pen.state()).map(({ stepKey }) => stepKey)
    for (const { stepKey, wheel } of pen.state().plan?.plan.steps ?? [])
      pen.write('photo.attached', photo({ stepKey, wheel }), bay)
    expect(readySteps(pen.state()).map(({ stepKey }) => stepKey)).toEqual(ready)
    expect(pen.state().closed).toEqual({})
    expect(pen.state().photos.length).toBeGreaterThan(10)
  })

  it('is shown to the customer when the desk says so, and only as long', () => {
    const pen = oneSensorJob('written-up')
    const one = pen.write('photo.attached', photo(), bay)
    const other = pen.write('photo.attached', photo({ wheel: 'LF' }), bay)
    const shared = () => pen.state().photos.map((each) => each.shared)
    expect(shared()).toEqual([false, false])
    pen.write('photo.shared', { photoId: other.id, shared: true }, { by: advisor })
    expect(shared()).toEqual([false, true])
    pen.write('photo.shared', { photoId: other.id, shared: false }, { by: advisor })
    expect(shared()).toEqual([false, false])
    expect(pen.attempt('photo.shared', { photoId: one.id, shared: true }, bay)).toMatchObject({
      admitted: false,
      code: 'ROLE_NOT_ALLOWED',
    })
  })

  it('that was withdrawn is not among the photos and is shown to nobody', () => {
    const pen = oneSensorJob('written-up')
    const { id } = pen.write('photo.attached', photo(), bay)
    pen.write('photo.shared', { photoId: id, shared: true }, { by: advisor })
    expect(pen.strike(id, technician).admitted).toBe(true)
    expect(pen.state().photos).toEqual([])
    expect(pen.attempt('photo.shared', { photoId: id, shared: true }, { by: advisor })).toMatchObject({
      code: 'PHOTO_UNKNOWN',
    })
  })

  it('names a kind of picture that browsers show, and no other', () => {
    const pen = oneSensorJob('written-up')
    const draft = (mediaType: string) =>
      parseDraft(
        {
          id: pen.orderId,
          orderId: pen.orderId,
          kind: 'photo.attached',
          version: 2,
          payload: { ...photo(), picture: { ...photo().picture, mediaType } },
          writtenAt: pen.now(),
          restsOn: [],
        },
        { shopId: pen.orderId, writtenBy: { kind: 'staff', staffId: technician.id }, deviceId: null },
      ).ok
    expect(['image/jpeg', 'image/svg+xml', 'text/html'].map(draft)).toEqual([true, false, false])
  })
})
