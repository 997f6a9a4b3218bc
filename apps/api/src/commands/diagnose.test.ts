import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ruleSetVersion } from '@bayledger/reckoning/diagnosis/diagnose'
import { afterAll, describe, expect, it, vi } from 'vitest'

vi.setConfig({ testTimeout: 60_000 })

const command = fileURLToPath(new URL('./diagnose.ts', import.meta.url))
const casesFolder = fileURLToPath(
  new URL('../../../../packages/reckoning/src/diagnosis/cases/', import.meta.url),
)
const folder = mkdtempSync(join(tmpdir(), 'bayledger-diagnose-'))
afterAll(() => rmSync(folder, { recursive: true }))

const run = (argument: readonly string[], input = '') => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...argument], {
    input,
    encoding: 'utf8',
  })
  return { status, stdout, lines: stderr.split('\n').filter((line) => line !== '') }
}

const evidence: Record<string, unknown> = JSON.parse(
  readFileSync(join(casesFolder, 'K02.json'), 'utf8'),
).evidence

describe('npm run -s diagnose', () => {
  it('prints the diagnosis of a file as JSON', () => {
    const file = join(folder, 'evidence.json')
    writeFileSync(file, JSON.stringify(evidence))
    const { status, stdout, lines } = run([file])
    expect({ status, lines }).toEqual({ status: 0, lines: [] })
    const diagnosis = JSON.parse(stdout)
    expect(diagnosis.ruleSet).toBe(ruleSetVersion)
    expect(diagnosis.primary).toBe('sensor-silent')
    expect(diagnosis.findings[0].wheels).toEqual(['RR'])
  })

  it('prints the same for standard input', () => {
    const file = join(folder, 'again.json')
    writeFileSync(file, JSON.stringify(evidence))
    expect(run(['-'], JSON.stringify(evidence)).stdout).toBe(run([file]).stdout)
  })

  it('names each field that is wrong, what was found and what is allowed, one a line', () => {
    const wrong = {
      ...evidence,
      units: { pressure: 'atm', temperature: 'F', altitude: 'ft' },
      wheels: { LF: { gauge: 'low', guage: 3 }, XX: {} },
      'two\nlines': true,
    }
    const { status, stdout, lines } = run(['-'], JSON.stringify(wrong))
    expect(status).toBe(2)
    expect(stdout).toBe('')
    expect(lines).toHaveLength(5)
    expect(lines[0]).toBe('units.pressure: found "atm"; allowed is one of psi, kPa, bar')
    expect(lines[1]).toBe('wheels.LF.gauge: found "low"; allowed is a number')
    expect(lines[2]).toMatch(
      /^wheels\.LF\.guage: found 3; allowed is no field of this name; known here are mounted, gauge,/,
    )
    expect(lines[3]).toBe(
      'wheels.XX: found an object; allowed is no field of this name; known here are LF, RF, RR, LR, SP',
    )
    expect(lines[4]).toMatch(/^"two\\nlines": found true; allowed is no field of this name/)
  })

  it('names a gauge of 450 psi and an ID on a silent wheel', () => {
    const wrong = { ...evidence, wheels: { LF: { gauge: 450, answer: 'silent', id: '1A2B' } } }
    expect(run(['-'], JSON.stringify(wrong))).toMatchObject({
      status: 2,
      lines: [
        'wheels.LF.gauge: found 450; allowed is -20 to 400 psi',
        'wheels.LF.id: found 1A2B; allowed is only on a wheel whose answer is answered',
      ],
    })
  })

  it('says in words what is wrong with a file that is too large, missing, not JSON or not named', () => {
    const refusals = [
      run(['-'], ' '.repeat(1_000_001)),
      run([join(folder, 'nowhere.json')]),
      run(['-'], '{"units": '),
      run(['-'], '[1, 2]'),
      run([]),
    ]
    expect(refusals.map(({ status }) => status)).toEqual([2, 2, 2, 2, 2])
    expect(refusals.map(({ stdout }) => stdout)).toEqual(['', '', '', '', ''])
    const firstLines = refusals.map(({ lines }) => lines[0] ?? '')
    expect(firstLines[0]).toMatch(/more than 1 MB; allowed is at most 1 MB/)
    expect(firstLines[1]).toMatch(/nowhere\.json: cannot be read \(ENOENT/)
    expect(firstLines[2]).toMatch(/found text that is not JSON .*; allowed is one JSON object/)
    expect(firstLines[3]).toBe('evidence: found a list of 2; allowed is an object')
    expect(firstLines[4]).toMatch(/^Name one evidence file, or - for standard input/)
    for (const { lines } of refusals) expect(lines).toHaveLength(1)
  })

  it('shows the first hundred faults of very many', () => {
    const many = Object.fromEntries(Array.from({ length: 500 }, (_none, index) => [`field${index}`, index]))
    const { status, lines } = run(['-'], JSON.stringify({ ...evidence, ...many }))
    expect(status).toBe(2)
    expect(lines).toHaveLength(101)
    expect(lines[100]).toBe('evidence: found 400 more faults; allowed is none; fix these first')
  })
})
