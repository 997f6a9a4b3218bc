import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { describe, expect, it } from 'vitest'
import { nextToCheck } from './next-to-check.ts'

const units = { pressure: 'psi', temperature: 'F', altitude: 'ft' } as const
const withLabel = (verified: boolean) =>
  diagnose({
    units,
    vehicle: { system: 'indirect', placard: { front: 33, rear: 33, verified } },
    wheels: { LF: { gauge: 24 }, RF: { gauge: 33 } },
  })

describe('what is to be checked next', () => {
  it('is the door label, as long as nobody but who typed it has read it', () => {
    const { here, atDesk } = nextToCheck(withLabel(false), {})
    expect(here).toMatchObject({ task: { what: 'door-label' }, check: { field: 'vehicle.placard.verified' } })
    expect(atDesk).toBeNull()
  })

  it('is what the rules rank first where the label was read by two', () => {
    const diagnosis = withLabel(true)
    const { here } = nextToCheck(diagnosis, {})
    expect(here?.check).toBe(diagnosis.nextChecks.find(({ field }) => field === here?.check.field))
    expect(here?.task).not.toEqual({ what: 'door-label' })
  })
})
