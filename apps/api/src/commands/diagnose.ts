import { createReadStream } from 'node:fs'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { type EvidenceFault, parseEvidence } from '@bayledger/reckoning/evidence/evidence'

/**
 * `npm run -s diagnose -- evidence.json` prints the diagnosis as JSON; `-` reads standard input. Evidence that cannot
 * be read ends with status 2 and one line for each fault on standard error.
 */
const mostBytes = 1_000_000
const mostFaults = 100
const malformed = 2

const [source, ...more] = process.argv.slice(2)

if (source === undefined || more.length > 0) {
  refuse(['Name one evidence file, or - for standard input: npm run -s diagnose -- evidence.json'])
} else {
  const read = await readUpTo(source)
  if ('problem' in read) refuse([read.problem])
  else answer(read.text)
}

type Read = { readonly text: string } | { readonly problem: string }

async function readUpTo(name: string): Promise<Read> {
  const stream = name === '-' ? process.stdin : createReadStream(name)
  const chunks: Buffer[] = []
  let size = 0
  try {
    for await (const chunk of stream) {
      const bytes = Buffer.from(chunk)
      size += bytes.length
      if (size > mostBytes) {
        return {
          problem: `evidence: found more than 1 MB; allowed is at most 1 MB, and a vehicle takes about 5 kB`,
        }
      }
      chunks.push(bytes)
    }
  } catch (error) {
    return { problem: `${name}: cannot be read (${error instanceof Error ? error.message : String(error)})` }
  }
  return {
    text: Buffer.concat(chunks)
      .toString('utf8')
      .replace(/^\uFEFF/, ''),
  }
}

function answer(text: string): void {
  const json = parseJson(text)
  if ('problem' in json) {
    refuse([json.problem])
    return
  }
  const parsed = parseEvidence(json.value)
  if (parsed.ok) console.log(JSON.stringify(diagnose(parsed.evidence), null, 2))
  else refuse(faultLines(parsed.faults))
}

function parseJson(text: string): { readonly value: unknown } | { readonly problem: string } {
  try {
    return { value: JSON.parse(text) }
  } catch (error) {
    const why = error instanceof Error ? error.message.replace(/\s+/g, ' ') : String(error)
    return { problem: `evidence: found text that is not JSON (${why}); allowed is one JSON object` }
  }
}

function faultLines(faults: readonly EvidenceFault[]): string[] {
  const lines = faults
    .slice(0, mostFaults)
    .map(({ field, found, allowed }) => `${field}: found ${found}; allowed is ${allowed}`)
  const rest = faults.length - lines.length
  return rest > 0 ? [...lines, `evidence: found ${rest} more faults; mend these first`] : lines
}

function refuse(lines: readonly string[]): void {
  for (const line of lines) console.error(line)
  process.exitCode = malformed
}
