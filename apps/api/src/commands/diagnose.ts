import { once } from 'node:events'
import { createReadStream } from 'node:fs'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { mostEvidenceBytes } from '@bayledger/reckoning/evidence/most-evidence'
import { faultLine, readEvidence } from '@bayledger/reckoning/evidence/read-evidence'
import { english } from '@bayledger/wording/en/english'
import { wordedDiagnosis } from '@bayledger/wording/worded-diagnosis'
import { diagnoseLines } from './diagnose-lines.ts'

/**
 * `npm run -s diagnose -- evidence.json` prints the diagnosis as JSON; `-` reads standard input. Evidence that cannot
 * be read ends with status 2 and one line for each fault on standard error.
 *
 * `npm run -s diagnose -- --lines evidence.jsonl` (or `-`) takes one evidence a line and prints one line of JSON for
 * each: the diagnosis, or `{ line, problems }`. It ends with status 2 if a line was malformed, and with 1 if the answers
 * cannot be written.
 */
const malformed = 2

const [first, ...others] = process.argv.slice(2)
const inLines = first === '--lines'
const [source, ...more] = inLines ? others : [first, ...others]

if (source === undefined || more.length > 0 || source.startsWith('--')) {
  refuse([
    'Name one evidence file, or - for standard input: npm run -s diagnose -- evidence.json; for one evidence a line: npm run -s diagnose -- --lines evidence.jsonl',
  ])
} else if (inLines) {
  await answerLines(source)
} else {
  const read = await readUpTo(source)
  if ('problem' in read) refuse([read.problem])
  else answer(read.bytes)
}

/** Null where there was more than is read. */
type Read = { readonly bytes: Uint8Array | null } | { readonly problem: string }

function streamOf(name: string): AsyncIterable<Uint8Array> {
  return name === '-' ? process.stdin : createReadStream(name)
}

function cannotRead(name: string, error: unknown): string {
  return `${name}: cannot be read (${error instanceof Error ? error.message : String(error)})`
}

async function readUpTo(name: string): Promise<Read> {
  const chunks: Buffer[] = []
  let size = 0
  try {
    for await (const chunk of streamOf(name)) {
      const bytes = Buffer.from(chunk)
      size += bytes.length
      if (size > mostEvidenceBytes) return { bytes: null }
      chunks.push(bytes)
    }
  } catch (error) {
    return { problem: cannotRead(name, error) }
  }
  return { bytes: Buffer.concat(chunks) }
}

function answer(bytes: Uint8Array | null): void {
  const read = readEvidence(bytes)
  if (read.ok) console.log(JSON.stringify(wordedDiagnosis(english, diagnose(read.evidence)), null, 2))
  else refuse(read.faults.map(faultLine))
}

async function answerLines(name: string): Promise<void> {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    // Whoever reads the answers may stop early, as `head` does.
    if (error.code === 'EPIPE') process.exit()
    console.error(`the answers cannot be written (${error.message})`)
    process.exit(1)
  })
  try {
    const done = await diagnoseLines(streamOf(name), {
      answer: async (line) => {
        if (!process.stdout.write(`${line}\n`)) await once(process.stdout, 'drain')
      },
      progress: process.stderr.isTTY ? (words) => process.stderr.write(words) : null,
    })
    if (done.malformed > 0) process.exitCode = malformed
  } catch (error) {
    refuse([cannotRead(name, error)])
  }
}

function refuse(lines: readonly string[]): void {
  for (const line of lines) console.error(line)
  process.exitCode = malformed
}
