import { describe, expect, it } from 'vitest'
import { inReadingOrder } from '../../wheels.ts'
import { workedCases } from '../cases/worked-cases.test-support.ts'
import { judge } from './judge.ts'

/** What was found where, in no order. */
const foundIn = (findings: readonly { code: string; wheels: Parameters<typeof inReadingOrder>[0] }[]) =>
  findings.map(({ code, wheels }) => `${code}@${inReadingOrder(wheels).join('+')}`).sort()

describe('judging by itself, without asking what to check next', () => {
  it.each(workedCases)('finds in $name exactly what is expected', ({ evidence, expected }) => {
    const { judged, primary } = judge(evidence)
    expect(foundIn(judged.map(({ rule, match }) => ({ code: rule.code, wheels: match.wheels })))).toEqual(
      foundIn(expected.findings),
    )
    expect(primary).toBe(expected.primary)
  })
})
