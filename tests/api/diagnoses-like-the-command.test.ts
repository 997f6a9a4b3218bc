import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { workedCases } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import type { EvidenceFault } from '@bayledger/reckoning/evidence/evidence'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let bay: Caller
beforeAll(async () => {
  shop = await startTestApp()
  bay = await (await shop.tablet()).signIn('rufus')
})
afterAll(() => shop.stop())

const command = join(import.meta.dirname, '../../apps/api/src/commands/diagnose.ts')

const commandSays = (text: string) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, '-'], {
    input: text,
    encoding: 'utf8',
  })
  return { status, stdout, lines: stderr.split('\n').filter((line) => line !== '') }
}

const serviceSays = async (text: string) => {
  const reply = await bay.call('post', '/api/diagnoses', { 'content-type': 'application/json' }).send(text)
  return { status: reply.status, type: reply.type, text: reply.text, body: JSON.parse(reply.text) }
}

const lineOf = ({ field, found, allowed }: EvidenceFault): string =>
  `${field}: found ${found}; allowed is ${allowed}`

const [sound] = workedCases
if (sound === undefined) throw new Error('there are no cases')
const evidence = sound.evidence
const changed = (values: object): string => JSON.stringify({ ...evidence, ...values })
const wheel = (values: object): string =>
  changed({ wheels: { ...evidence.wheels, LF: { ...evidence.wheels?.LF, ...values } } })
const fields = Object.fromEntries(Array.from({ length: 5_000 }, (_none, index) => [`field${index}`, index]))

describe('what the command and the service say of the same evidence', () => {
  it.each(
    workedCases.filter(({ name }) => /^(K01|K11|K33|K42|M07|hot-corner-fires|slow-leak-not)$/.test(name)),
  )('$name: the same diagnosis, byte for byte', async (one) => {
    const text = JSON.stringify(one.evidence)
    const [said, answered] = [commandSays(text), await serviceSays(text)]
    expect([said.status, answered.status]).toEqual([0, 200])
    expect(JSON.stringify(JSON.parse(said.stdout))).toBe(answered.text)
    expect(said.stdout).toBe(`${JSON.stringify(answered.body, null, 2)}\n`)
  })

  const bad: readonly [title: string, text: string, first: RegExp][] = [
    ['no JSON', '{"units": ', /^evidence: found text that is not JSON \(.+\); allowed is one JSON object$/],
    ['nothing at all', '', /^evidence: found text that is not JSON/],
    ['a list', '[1, 2]', /^evidence: found a list of 2; allowed is an object$/],
    ['text', '"K01"', /^evidence: found "K01"; allowed is an object$/],
    [
      'lists in lists, 100,000 deep',
      `${'['.repeat(100_000)}${']'.repeat(100_000)}`,
      /^evidence: found a list of 1/,
    ],
    ['a gauge in words', wheel({ gauge: 'low' }), /^wheels\.LF\.gauge: found "low"; allowed is a number$/],
    [
      'a gauge of 450 psi',
      wheel({ gauge: 450 }),
      /^wheels\.LF\.gauge: found 450; allowed is -20 to 400 psi$/,
    ],
    [
      'a gauge beyond all numbers',
      wheel({ gauge: 0 }).replace('"gauge":0', '"gauge":1e999'),
      /^wheels\.LF\.gauge: found/,
    ],
    [
      'a unit that is none',
      changed({ units: { pressure: 'atm', temperature: 'F', altitude: 'ft' } }),
      /^units\.pressure: found "atm"; allowed is one of psi, kPa, bar$/,
    ],
    ['no units', changed({ units: undefined }), /^units: found nothing; allowed is an object$/],
    [
      'an ID from a silent sensor',
      wheel({ answer: 'silent', id: '1A2B' }),
      /^wheels\.LF\.id: found "?1A2B"?; allowed is only/,
    ],
    [
      'a field that is misspelled',
      wheel({ guage: 22 }),
      /^wheels\.LF\.guage: found 22; allowed is no field of this name/,
    ],
    [
      'a field named __proto__',
      changed({}).replace('{', '{"__proto__": {"light": 1},'),
      /^__proto__: found an object; allowed is no field/,
    ],
    [
      'a list that is too long',
      changed({ strayIds: Array(101).fill('AB') }),
      /^strayIds: found a list of 101; allowed is at most 100 entries$/,
    ],
    ['5,000 unknown fields', changed(fields), /^field0: found 0; allowed is no field of this name/],
    [
      '10 MB',
      changed({ notPossible: [{ field: 'light', why: 'x'.repeat(10_000_000) }] }),
      /^evidence: found more than 1 MB; allowed is at most 1 MB/,
    ],
    ['10 MB of blanks', ' '.repeat(10_000_000), /^evidence: found more than 1 MB/],
  ]

  it.each(bad)('%s: refused by both, with the same faults, one a line', async (_title, text, first) => {
    const [said, answered] = [commandSays(text), await serviceSays(text)]
    expect([said.status, said.stdout]).toEqual([2, ''])
    expect([answered.status, answered.type]).toEqual([422, 'application/problem+json'])
    expect(answered.body.code).toBe('EVIDENCE_INVALID')
    expect(said.lines[0]).toMatch(first)
    expect(answered.body.fields.map(lineOf)).toEqual(said.lines)
    expect(Object.keys(answered.body)).not.toContain('findings')
  })

  it('of very many faults both list the first hundred, and how many more there are', async () => {
    const { body } = await serviceSays(changed(fields))
    expect(body.fields).toHaveLength(101)
    expect(body.fields[100]).toEqual({
      field: 'evidence',
      found: '4900 more faults',
      allowed: 'none; fix these first',
    })
  })

  it('a stranger learns nothing about the evidence, however large it is', async () => {
    const reply = await shop.nobody
      .call('post', '/api/diagnoses', { 'content-type': 'application/json' })
      .send(' '.repeat(2_000_000))
    expect(reply.status).toBe(401)
  })
})
