import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { workedCases } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { english } from '@bayledger/wording/en/english'
import { wordedDiagnosis } from '@bayledger/wording/worded-diagnosis'
import { afterAll, describe, expect, it, vi } from 'vitest'
import { diagnoseLines } from './diagnose-lines.ts'

vi.setConfig({ testTimeout: 60_000 })

const command = fileURLToPath(new URL('./diagnose.ts', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'bayledger-diagnose-lines-'))
afterAll(() => rmSync(folder, { recursive: true }))

const run = (argument: readonly string[], input = '') => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, '--lines', ...argument], {
    input,
    encoding: 'utf8',
  })
  return { status, answers: stdout.split('\n').slice(0, -1), stderr }
}

const someCases = workedCases.slice(0, 5)
const lineOf = ({ evidence }: (typeof someCases)[number]): string => JSON.stringify(evidence)
const answerTo = ({ evidence }: (typeof someCases)[number]): string =>
  JSON.stringify(wordedDiagnosis(english, diagnose(evidence)))
const [one] = someCases
if (one === undefined) throw new Error('there are no cases')

const answered = async (chunks: readonly Uint8Array[]) => {
  const answers: string[] = []
  const progress: string[] = []
  const done = await diagnoseLines(each(chunks), {
    answer: async (line) => void answers.push(line),
    progress: (words) => void progress.push(words),
  })
  return { answers, progress, done }
}

async function* each(chunks: readonly Uint8Array[]) {
  yield* chunks
}

describe('npm run -s diagnose -- --lines', () => {
  it('answers each line of a file with the diagnosis that the same evidence has by itself, in order', () => {
    const file = join(folder, 'evidence.jsonl')
    writeFileSync(file, someCases.map((each) => `${lineOf(each)}\n`).join(''))
    expect(run([file])).toEqual({ status: 0, answers: someCases.map(answerTo), stderr: '' })
  })

  it('reads standard input, Windows line ends, and a last line without a line end', () => {
    const input = `${lineOf(one)}\r\n${lineOf(one)}`
    expect(run(['-'], input)).toEqual({ status: 0, answers: [answerTo(one), answerTo(one)], stderr: '' })
  })

  it('answers a malformed line with one line of its problems, goes on, and ends with status 2', () => {
    const wrong = { ...one.evidence, wheels: { LF: { gauge: 450, guage: 3 } } }
    const input = ['{"units": ', lineOf(one), JSON.stringify(wrong), '', '[1]', lineOf(one)].join('\n')
    const { status, answers, stderr } = run(['-'], `${input}\n`)
    expect({ status, stderr, count: answers.length }).toEqual({ status: 2, stderr: '', count: 6 })
    expect([answers[1], answers[5]]).toEqual([answerTo(one), answerTo(one)])
    expect(JSON.parse(answers[0] ?? '')).toMatchObject({
      line: 1,
      problems: [{ field: 'evidence', allowed: 'one JSON object' }],
    })
    expect(JSON.parse(answers[2] ?? '')).toMatchObject({
      line: 3,
      problems: [{ field: 'wheels.LF.guage', found: '3' }],
    })
    expect(JSON.parse(answers[3] ?? '')).toMatchObject({ line: 4, problems: [{ field: 'evidence' }] })
    expect(JSON.parse(answers[4] ?? '')).toMatchObject({
      line: 5,
      problems: [{ field: 'evidence', found: 'a list of 1', allowed: 'an object' }],
    })
  })

  it('answers nothing to nothing', () => {
    expect(run(['-'])).toEqual({ status: 0, answers: [], stderr: '' })
  })

  it('says in words what is wrong with a file that is missing or not named, or with another option', () => {
    expect(run([join(folder, 'nowhere.jsonl')])).toMatchObject({
      status: 2,
      answers: [],
      stderr: expect.stringMatching(/nowhere\.jsonl: cannot be read \(ENOENT/),
    })
    for (const argument of [[], ['a', 'b'], ['--pages']]) {
      expect(run(argument)).toMatchObject({
        status: 2,
        answers: [],
        stderr: expect.stringMatching(/^Name one evidence file.*--lines evidence\.jsonl\n$/),
      })
    }
  })

  it('answers a line before the next one is written', async () => {
    const child = spawn(process.execPath, [command, '--lines', '-'], { stdio: ['pipe', 'pipe', 'inherit'] })
    const ended = new Promise((resolve) => child.on('exit', resolve))
    const answers = createInterface({ input: child.stdout })[Symbol.asyncIterator]()
    for (const each of someCases) {
      child.stdin.write(`${lineOf(each)}\n`)
      expect((await answers.next()).value).toBe(answerTo(each))
    }
    child.stdin.end()
    expect(await ended).toBe(0)
  })

  it('ends without words when nobody reads the answers any more', async () => {
    const child = spawn(process.execPath, [command, '--lines', '-'], { stdio: ['pipe', 'pipe', 'pipe'] })
    child.stdin.on('error', () => {})
    const ended = new Promise((resolve) => child.on('exit', resolve))
    const words: Buffer[] = []
    child.stderr.on('data', (chunk: Buffer) => words.push(chunk))
    child.stdout.once('data', () => child.stdout.destroy())
    child.stdin.end(`${lineOf(one)}\n`.repeat(50))
    await ended
    expect(Buffer.concat(words).toString()).toBe('')
  })
})

describe('lines of evidence', () => {
  it('are the same however the bytes are cut', async () => {
    const bytes = Buffer.from(`${lineOf(one)}\n{"units": "é"}\n${lineOf(one)}`)
    const whole = await answered([bytes])
    for (const size of [1, 7, 1_000]) {
      const cut = Array.from({ length: Math.ceil(bytes.length / size) }, (_, index) =>
        bytes.subarray(index * size, (index + 1) * size),
      )
      expect(await answered(cut)).toEqual(whole)
    }
    expect(whole.done).toEqual({ lines: 3, malformed: 1 })
  })

  it('of more than 1 MB are malformed, and the line after one is read', async () => {
    const { answers, done } = await answered([
      Buffer.alloc(700_000, ' '),
      Buffer.alloc(700_000, ' '),
      Buffer.from(`\n${lineOf(one)}\n`),
    ])
    expect(done).toEqual({ lines: 2, malformed: 1 })
    expect(JSON.parse(answers[0] ?? '').problems).toEqual([
      { field: 'evidence', found: 'more than 1 MB', allowed: 'at most 1 MB; a vehicle takes about 5 kB' },
    ])
    expect(answers[1]).toBe(answerTo(one))
  })

  it('are counted for whoever watches, every hundred and at the end, and not if there are few', async () => {
    const few = await answered([Buffer.from('x\n'.repeat(99))])
    expect(few.progress).toEqual([])
    const many = await answered([Buffer.from('x\n'.repeat(1_150))])
    expect(many.progress.slice(0, 2)).toEqual(['\r100 lines, 100 malformed', '\r200 lines, 200 malformed'])
    expect(many.progress.slice(-2)).toEqual(['\r1,150 lines, 1,150 malformed', '\n'])
    expect(many.progress).toHaveLength(13)
  })
})
