import { describe, expect, it } from 'vitest'
import { cameraMissing, cameraProblem } from './camera.ts'

describe('a camera', () => {
  it('is missing on an insecure page, and where the browser knows no devices', () => {
    expect(cameraMissing({ isSecureContext: false, hasDevices: false })).toBe('insecure')
    expect(cameraMissing({ isSecureContext: true, hasDevices: false })).toBe('none')
    expect(cameraMissing({ isSecureContext: true, hasDevices: true })).toBeNull()
  })

  it.each([
    ['NotAllowedError', 'refused'],
    ['NotFoundError', 'none'],
    ['NotReadableError', 'in-use'],
    ['TypeError', 'unknown'],
  ])('that answers %s is %s', (name, problem) => {
    expect(cameraProblem(name)).toBe(problem)
  })
})
