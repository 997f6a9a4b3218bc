import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { mostEvidenceBytes } from '@bayledger/reckoning/evidence/most-evidence'
import { readEvidence } from '@bayledger/reckoning/evidence/read-evidence'
import { english } from '@bayledger/wording/en/english'
import { wordedDiagnosis } from '@bayledger/wording/worded-diagnosis'

/** Where answers go, and where the count of them goes while they are made; no count where nobody watches. */
export type LinesOut = {
  readonly answer: (line: string) => Promise<void>
  readonly progress: ((words: string) => void) | null
}

/** After how many lines the count is written again. */
const countedEvery = 100

/**
 * Answers each line of evidence with one line of JSON, in the order in which they came and as soon as each is read: its
 * diagnosis, or the number of the line and its problems. An empty line is malformed too, so that the n-th answer always
 * belongs to the n-th line; what follows the last line break is a line only if it is not empty. Resolves to how many
 * lines there were and how many of them were malformed.
 */
export const diagnoseLines = async (
  input: AsyncIterable<Uint8Array>,
  { answer, progress }: LinesOut,
): Promise<{ readonly lines: number; readonly malformed: number }> => {
  let lines = 0
  let malformed = 0
  const count = (): void =>
    progress?.(`\r${lines.toLocaleString('en-US')} lines, ${malformed.toLocaleString('en-US')} malformed`)
  for await (const bytes of linesOf(input)) {
    lines += 1
    const read = readEvidence(bytes)
    if (!read.ok) malformed += 1
    await answer(
      JSON.stringify(
        read.ok ? wordedDiagnosis(english, diagnose(read.evidence)) : { line: lines, problems: read.faults },
      ),
    )
    if (lines % countedEvery === 0) count()
  }
  if (lines >= countedEvery) {
    count()
    progress?.('\n')
  }
  return { lines, malformed }
}

const lineBreak = 10

/** The bytes of each line without its break; null for a line that is too long to be evidence, of which nothing is kept. */
async function* linesOf(input: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array | null> {
  let kept: Uint8Array[] = []
  let size = 0
  const keep = (part: Uint8Array): void => {
    size += part.length
    if (size > mostEvidenceBytes) kept = []
    else kept.push(part)
  }
  const take = (): Uint8Array | null => {
    const line = size > mostEvidenceBytes ? null : Buffer.concat(kept)
    kept = []
    size = 0
    return line
  }
  for await (const chunk of input) {
    let start = 0
    for (let end = chunk.indexOf(lineBreak); end >= 0; end = chunk.indexOf(lineBreak, start)) {
      keep(chunk.subarray(start, end))
      yield take()
      start = end + 1
    }
    keep(chunk.subarray(start))
  }
  if (size > 0) yield take()
}
