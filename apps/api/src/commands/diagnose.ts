import { createReadStream } from 'node:fs'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { mostEvidenceBytes } from '@bayledger/reckoning/evidence/most-evidence'
import { faultLine, readEvidence } from '@bayledger/reckoning/evidence/read-evidence'
import { english } from '@bayledger/wording/en/english'
import { wordedDiagnosis } from '@bayledger/wording/worded-diagnosis'

/**
 * `npm run -s diagnose -- evidence.json` prints the diagnosis as JSON; `-` reads standard input. Evidence that cannot
 * be read ends with status 2 and one line for each fault on standard error.
 */
const malformed = 2

const [source, ...more] = process.argv.slice(2)

if (source === undefined || more.length > 0) {
  refuse(['Name one evidence file, or - for standard input: npm run -s diagnose -- evidence.json'])
} else {
  const read = await readUpTo(source)
  if ('problem' in read) refuse([read.problem])
  else answer(read.bytes)
}

/** Null where there was more than is read. */
type Read = { readonly bytes: Uint8Array | null } | { readonly problem: string }

async function readUpTo(name: string): Promise<Read> {
  const stream = name === '-' ? process.stdin : createReadStream(name)
  const chunks: Buffer[] = []
  let size = 0
  try {
    for await (const chunk of stream) {
      const bytes = Buffer.from(chunk)
      size += bytes.length
      if (size > mostEvidenceBytes) return { bytes: null }
      chunks.push(bytes)
    }
  } catch (error) {
    return { problem: `${name}: cannot be read (${error instanceof Error ? error.message : String(error)})` }
  }
  return { bytes: Buffer.concat(chunks) }
}

function answer(bytes: Uint8Array | null): void {
  const read = readEvidence(bytes)
  if (read.ok) console.log(JSON.stringify(wordedDiagnosis(english, diagnose(read.evidence)), null, 2))
  else refuse(read.faults.map(faultLine))
}

function refuse(lines: readonly string[]): void {
  for (const line of lines) console.error(line)
  process.exitCode = malformed
}
