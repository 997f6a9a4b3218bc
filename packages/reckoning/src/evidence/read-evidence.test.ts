import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mostEvidenceBytes } from './most-evidence.ts'
import { faultLine, readEvidence } from './read-evidence.ts'

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)
const units = { pressure: 'psi', temperature: 'F', altitude: 'ft' }
const linesOf = (text: string | null): string[] => {
  const read = readEvidence(text === null ? null : bytes(text))
  return read.ok ? [] : read.faults.map(faultLine)
}

describe('evidence from a file or over the wire', () => {
  it('is read with and without a byte order mark', () => {
    const text = JSON.stringify({ units })
    expect(readEvidence(bytes(text))).toEqual({ ok: true, evidence: { units } })
    expect(readEvidence(bytes(`\uFEFF${text}`))).toEqual({ ok: true, evidence: { units } })
  })

  it('says in one line what is wrong with text that is no JSON', () => {
    expect(linesOf('{"units":\n oops}')).toEqual([
      expect.stringMatching(/^evidence: found text that is not JSON \([^\n]+\); allowed is one JSON object$/),
    ])
  })

  it('may be one megabyte and not a byte more', () => {
    const padded = (size: number) => JSON.stringify({ units }).padEnd(size)
    expect(linesOf(padded(mostEvidenceBytes))).toEqual([])
    const tooMuch = ['evidence: found more than 1 MB; allowed is at most 1 MB; a vehicle takes about 5 kB']
    expect(linesOf(padded(mostEvidenceBytes + 1))).toEqual(tooMuch)
    expect(linesOf(null)).toEqual(tooMuch)
  })

  it('lists a hundred faults, and how many more there are', () => {
    const wrong = (count: number) =>
      JSON.stringify({
        units,
        ...Object.fromEntries(Array.from({ length: count }, (_none, index) => [`f${index}`, 1])),
      })
    expect(linesOf(wrong(100))).toHaveLength(100)
    expect(linesOf(wrong(102)).at(-1)).toBe('evidence: found 2 more faults; allowed is none; fix these first')
    expect(linesOf(wrong(102))).toHaveLength(101)
  })

  it('never throws, and takes or names a fault, whatever the bytes', () => {
    const anyBytes = fc.oneof(
      fc.uint8Array({ maxLength: 200 }),
      fc.json().map(bytes),
      fc.string({ unit: 'binary' }).map(bytes),
      fc
        .tuple(
          fc.constantFrom('vehicle', 'light', 'wheels', 'events', 'history', 'notPossible'),
          fc.jsonValue(),
        )
        .map(([field, value]) => bytes(JSON.stringify({ units, [field]: value }))),
    )
    fc.assert(
      fc.property(anyBytes, (given) => {
        const read = readEvidence(given)
        if (read.ok) return
        expect(read.faults.length).toBeGreaterThan(0)
        for (const fault of read.faults)
          expect(faultLine(fault)).toMatch(/^[^\n]+: found [^\n]+; allowed is [^\n]+$/)
      }),
      { numRuns: 10_000, seed: 20260112 },
    )
  })
})
