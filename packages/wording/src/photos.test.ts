import { namedStep } from '@bayledger/reckoning/step'
import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../ledger/test-support/one-sensor-job.ts'
import { english } from './en/english.ts'
import { photoSubject, photoText } from './photos.ts'

const steps = () => (oneSensorJob('decided').state().plan?.plan.steps ?? []).map(namedStep)

describe('the text of a photo', () => {
  it('names the wheel, the step and the time', () => {
    const fit = { wheel: 'RR', stepKey: 'RR.sensor.fit', subject: 'sensor' } as const
    expect(photoText(english, fit, steps(), '10:42 AM')).toBe(
      'Photo of right rear, step Old sensor out, new one in, 10:42 AM',
    )
  })

  it('names what is photographed where there is no step, or none any more', () => {
    const label = { wheel: null, stepKey: null, subject: 'placard' } as const
    expect(photoText(english, label, [], '8:05 AM')).toBe('Photo of the vehicle, door label, 8:05 AM')
    const gone = { wheel: 'LF', stepKey: 'LF.sensor.fit', subject: 'sensor' } as const
    expect(photoSubject(english, gone, [])).toBe('sensor')
  })

  it('of what is not right says so, whatever the step was', () => {
    const stud = { wheel: 'RR', stepKey: 'RR.wheel.off', subject: 'not-right' } as const
    expect(photoSubject(english, stud, steps())).toBe('what is not right')
  })
})
