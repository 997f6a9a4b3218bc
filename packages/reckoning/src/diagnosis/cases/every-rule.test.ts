import { describe, expect, it } from 'vitest'
import type { Evidence } from '../../evidence/evidence-schema.ts'
import { FindingCode } from '../finding-codes.ts'
import { ruleCases, type WorkedCase, workedCases } from './worked-cases.test-support.ts'

const finds = ({ expected }: WorkedCase, rule: FindingCode): boolean =>
  expected.findings.some(({ code }) => code === rule)

/** Each value of the evidence by its field; a field of the wheels counts once however many wheels have it. */
const valuesByField = (evidence: Evidence): Map<string, string> => {
  const values = new Map<string, string>()
  const walk = (node: unknown, path: readonly string[]): void => {
    if (typeof node === 'object' && node !== null && !Array.isArray(node)) {
      for (const [name, value] of Object.entries(node)) walk(value, [...path, name])
      return
    }
    const [head, second] = path
    const isOfPosition = head === 'wheels' || (head === 'controlModule' && second === 'ids')
    const field = isOfPosition
      ? path.map((name) => (/^(LF|RF|RR|LR|SP)$/.test(name) ? '*' : name)).join('.')
      : path.join('.')
    values.set(field, `${values.get(field) ?? ''}${path.join('.')}=${JSON.stringify(node)};`)
  }
  walk({ ...evidence, events: [...(evidence.events ?? [])] }, [])
  return values
}

const fieldsThatDiffer = (one: Evidence, other: Evidence): string[] => {
  const [before, after] = [valuesByField(one), valuesByField(other)]
  return [...new Set([...before.keys(), ...after.keys()])].filter(
    (field) => before.get(field) !== after.get(field),
  )
}

describe('every rule', () => {
  it.each(FindingCode.options)('%s: has a case in which it applies', (rule) => {
    expect(workedCases.filter((one) => finds(one, rule)).map(({ name }) => name)).not.toEqual([])
  })

  it.each(FindingCode.options)(
    '%s: has a case in which it just does not apply: a few fields away from one in which it does',
    (rule) => {
      const not = ruleCases.find(({ name }) => name === `${rule}-not`)
      if (not === undefined) throw new Error(`there is no case ${rule}-not`)
      expect(finds(not, rule)).toBe(false)
      const distances = workedCases
        .filter((one) => finds(one, rule))
        .map((one) => fieldsThatDiffer(one.evidence, not.evidence))
        .sort((one, other) => one.length - other.length)
      expect(distances[0]?.length, `${rule}: ${distances[0]?.join(', ')}`).toBeGreaterThan(0)
      expect(distances[0]?.length, `${rule}: ${distances[0]?.join(', ')}`).toBeLessThanOrEqual(3)
    },
  )

  it('has cases named for it, and each such case for a rule that there is', () => {
    for (const { name } of ruleCases) {
      const [, rule, applies] = /^(.*)-(fires|not)$/.exec(name) ?? []
      const code = FindingCode.parse(rule)
      const one = ruleCases.find((other) => other.name === name)
      expect(one && finds(one, code), name).toBe(applies === 'fires')
    }
  })
})
