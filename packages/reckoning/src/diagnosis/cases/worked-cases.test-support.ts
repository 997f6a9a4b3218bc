import { readdirSync, readFileSync } from 'node:fs'
import * as z from 'zod/mini'
import { type Evidence, parseEvidence } from '../../evidence/evidence.ts'
import { WheelPosition } from '../../wheels.ts'
import { FindingCode } from '../finding-codes.ts'

/** One worked case: what was seen, and exactly what must be found. Data for tests. */
export type WorkedCase = {
  readonly name: string
  readonly title: string
  readonly evidence: Evidence
  readonly expected: z.infer<typeof Expected>
}

const Expected = z.strictObject({
  primary: z.nullable(FindingCode),
  findings: z.array(z.strictObject({ code: FindingCode, wheels: z.array(WheelPosition) })),
})

const CaseFile = z.strictObject({
  case: z.string(),
  title: z.string(),
  evidence: z.unknown(),
  expected: Expected,
  mustHold: z.optional(z.string()),
})

const folder = new URL('./', import.meta.url)

const readCase = (file: string): WorkedCase => {
  const {
    case: name,
    title,
    evidence,
    expected,
  } = z.parse(CaseFile, JSON.parse(readFileSync(new URL(file, folder), 'utf8')))
  const parsed = parseEvidence(evidence)
  if (!parsed.ok) {
    throw new Error(
      `${name}: ${parsed.faults.map(({ field, allowed }) => `${field}: ${allowed}`).join('; ')}`,
    )
  }
  return { name, title, evidence: parsed.evidence, expected }
}

export const workedCases: readonly WorkedCase[] = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .sort()
  .map(readCase)
