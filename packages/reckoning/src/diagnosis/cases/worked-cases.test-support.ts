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
  /** What must hold beyond the names of the findings; its test is in must-hold.test-support.ts. */
  readonly mustHold: string | null
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

const readCase = (file: URL): WorkedCase => {
  const {
    case: name,
    title,
    evidence,
    expected,
    mustHold,
  } = z.parse(CaseFile, JSON.parse(readFileSync(file, 'utf8')))
  const parsed = parseEvidence(evidence)
  if (!parsed.ok) {
    throw new Error(
      `${name}: ${parsed.faults.map(({ field, allowed }) => `${field}: ${allowed}`).join('; ')}`,
    )
  }
  return { name, title, evidence: parsed.evidence, expected, mustHold: mustHold ?? null }
}

const casesIn = (folder: string): WorkedCase[] =>
  readdirSync(new URL(folder, import.meta.url))
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => readCase(new URL(`${folder}${file}`, import.meta.url)))

/** The cases that the trade worked out by hand. */
export const tradeCases: readonly WorkedCase[] = casesIn('./')

/** For each rule that needs one: a case in which it just applies (`…-fires`), and one in which it just does not (`…-not`). */
export const ruleCases: readonly WorkedCase[] = casesIn('./own/')

export const workedCases: readonly WorkedCase[] = [...tradeCases, ...ruleCases]

export const caseNamed = (name: string): WorkedCase => {
  const found = workedCases.find((one) => one.name === name)
  if (found === undefined) throw new Error(`no case ${name}`)
  return found
}
