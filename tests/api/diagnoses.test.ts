import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let bay: Caller
beforeAll(async () => {
  shop = await startTestApp()
  bay = await (await shop.tablet()).signIn('rufus')
})
afterAll(() => shop.stop())

const evidence = (gauge: number) => ({
  units: { pressure: 'psi', temperature: 'F', altitude: 'ft' },
  vehicle: { system: 'direct', placard: { front: 35, rear: 35, verified: true } },
  light: { lampCheck: 'lights', behavior: 'solid' },
  wheels: Object.fromEntries(
    ['LF', 'RF', 'RR', 'LR'].map((wheel) => [
      wheel,
      { gauge: wheel === 'LF' ? gauge : 35, answer: 'answered', tries: 1 },
    ]),
  ),
})
const codes = (body: { findings: { code: string }[] }) => body.findings.map(({ code }) => code)

describe('findings for evidence', () => {
  it('are computed as for an order', async () => {
    const { body } = await bay.post('/api/diagnoses', evidence(22)).expect(200)
    expect(codes(body)).toContain('tire-low')
    expect(body.primary).toBe('tire-low')
  })

  it('say of a gauge of 350 psi that it cannot be, and judge no tire by it', async () => {
    const { body } = await bay.post('/api/diagnoses', evidence(350)).expect(200)
    const finding = body.findings.find(({ code }: { code: string }) => code === 'reading-impossible')
    expect(finding).toMatchObject({ wheels: ['LF'], next: expect.stringMatching(/\w/) })
    expect(codes(body)).not.toContain('over-inflated')
  })

  it('are refused with every fault named: an unknown field, a unit that is none, a gauge beyond any gauge', async () => {
    const wrong = { ...evidence(450), tires: 4, units: { pressure: 'PSI', temperature: 'F', altitude: 'ft' } }
    const { body } = await bay.post('/api/diagnoses', wrong).expect(422)
    expect(body.code).toBe('EVIDENCE_INVALID')
    const fields = body.fields.map(({ field }: { field: string }) => field)
    expect(fields).toEqual(expect.arrayContaining(['tires', 'units.pressure']))
    for (const fault of body.fields)
      expect(fault).toEqual({
        field: expect.any(String),
        found: expect.any(String),
        allowed: expect.any(String),
      })
    const beyond = await bay.post('/api/diagnoses', evidence(450)).expect(422)
    expect(beyond.body.fields[0].field).toBe('wheels.LF.gauge')
  })
})
