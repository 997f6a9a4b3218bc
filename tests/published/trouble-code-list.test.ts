/**
 * Source: a public list of trouble codes (commit 91e10af2, February 2025), read; itself not the standard. It has U0127, lost
 * communication with the tire pressure monitor module: a code in the form that we read. Its text is not shown to
 * anyone as the standard's.
 */
import { readTroubleCode } from '@bayledger/reckoning/sensor/trouble-code'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'A public list of trouble codes', edition: 'February 2025', certainty: 'read' }, () => {
  it('U0127 is taken as it is listed', () => {
    expect(readTroubleCode('U0127')).toMatchObject({ ok: true, value: { text: 'U0127', failureType: null } })
  })
})
