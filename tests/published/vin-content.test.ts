/**
 * Source: 49 CFR 565.15, content of the VIN; read at law.lawstack.com/cfr/49/565.15 (checked there against the eCFR of June
 * 2026). (a): a maker of few vehicles a year has 9 at place 3 and is named by places 1-3 and 12-14. (b): the fourth
 * character of the second section (place 7) shall be alphabetic, for passenger cars and for multipurpose vehicles and
 * trucks of 4,536 kg or less.
 */
import { makerCode } from '@bayledger/reckoning/vehicle/maker-code'
import { modelYear } from '@bayledger/reckoning/vehicle/model-year'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: '49 CFR 565.15', section: '(a) and (b)', edition: 'June 2026', certainty: 'read' },
  () => {
    it.each([...'ABCDEFGHJKLMNPRSTUVWXYZ'])('%s at place 7 is of the years from 2010 on', (seventh) => {
      expect(modelYear(`1ZZ000${seventh}00A0000000`)).toBe(2010)
    })

    it.each([
      ['1Z900000000ABC000', '1Z9ABC', true],
      ['1ZZ00000000ABC000', '1ZZ', false],
      ['19Z00000000ABC000', '19Z', false],
    ])('the maker of %s is %s', (vin, code, lowVolume) => {
      expect(makerCode(vin)).toEqual({ code, lowVolume })
    })
  },
)
