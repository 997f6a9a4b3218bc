/**
 * Source: ISO 4217, list one of 2024-06-25, through the npm library currency-codes 2.2.0 (MIT): how many decimals a
 * currency has. The money library that counts our cents is to agree with it; the shop's own currency is the dollar.
 */
import { code } from 'currency-codes'
import { BHD, CAD, CLF, EUR, GBP, ISK, JPY, KRW, KWD, MXN, TND, USD } from 'dinero.js/currencies'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const digits = [
  [USD, 2],
  [CAD, 2],
  [EUR, 2],
  [MXN, 2],
  [GBP, 2],
  [JPY, 0],
  [KRW, 0],
  [ISK, 0],
  [KWD, 3],
  [BHD, 3],
  [TND, 3],
  [CLF, 4],
] as const

published({ document: 'ISO 4217', section: 'list one', edition: '2024-06-25', certainty: 'read' }, () => {
  it.each(digits)('$0.code has $1 decimals', (currency, decimals) => {
    expect(code(currency.code)?.digits).toBe(decimals)
    expect(currency.exponent).toBe(decimals)
  })
})
