import { expect, it } from 'vitest'
import { tirePrints as english } from './en/tire-prints.ts'
import { tirePrints as spanish } from './es/tire-prints.ts'
import { wornTireWords } from './worn-tires.ts'

it('says what wear hints at, what to check, and that it is a hint, in both languages', () => {
  const worn = {
    across: { read: { inner: 3, middle: 6, outer: 7 }, hint: 'inner-shoulder' },
    around: 'cups',
  } as const
  expect(wornTireWords(english, 'LF', worn)).toEqual([
    'The left front tire has 3/32, 6/32 and 7/32 in of tread from its inner side to its outer side: the inner shoulder is worn more than the outer one. A wheel that is not aligned often does that: have the alignment checked. It is a hint and no finding: it may have begun when the tire was at another wheel.',
    'The left front tire is worn in dips around it. A wheel out of balance or a worn damper often does that: check both. It is a hint and no finding: it may have begun when the tire was at another wheel.',
  ])
  expect(wornTireWords(spanish, 'LF', worn).join(' ')).toMatch(
    /tiene 3\/32, 6\/32 y 7\/32 in de dibujo.*hombro de adentro.*hondonadas.*Es un indicio y no un hallazgo/,
  )
  expect(wornTireWords(english, 'LF', { across: null, around: null })).toEqual([])
})
