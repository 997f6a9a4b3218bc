/** Source: 49 CFR 574.5, the symbols that may be used; from memory: G, I, O, Q, S and Z are not among them. */
import { readTin } from '@bayledger/reckoning/tire/read-tin'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const today = '2026-09-30' as CalendarDay

published({ document: '49 CFR 574.5', section: 'symbols', certainty: 'from memory' }, () => {
  it.each([...'GIOQSZ'])('%s is not used', (symbol) => {
    expect(readTin(`1A4${symbol}BCDEF2620`, today)).toMatchObject({
      fault: 'symbol',
      do: expect.stringContaining(`"${symbol}"`),
    })
  })

  it.each([...'ABCDEFHJKLMNPRTUVWXY0123456789'])('%s is used', (symbol) => {
    expect(readTin(`1A4${symbol}BCDEF2620`, today)).toMatchObject({
      value: { makersCode: `${symbol}BCDEF` },
    })
  })
})
