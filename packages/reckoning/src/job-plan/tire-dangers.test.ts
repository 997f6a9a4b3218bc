import { describe, expect, it } from 'vitest'
import { howOf } from '../../test-support/in-words.ts'
import { find, steps } from '../../test-support/planned.ts'
import { utilitySheet as sheet } from '../../test-support/utility-sheet.ts'
import type { Work } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import { careOf } from './tire-dangers.ts'

/** The order of the work on such tires: trade associations' advice on sealants and on burst sidewalls, from memory. */
const leak: readonly Work[] = [{ kind: 'find-leak', wheel: 'LF' }]
const truck: SpecificationSheet = {
  ...sheet,
  tire: { ...sheet.tire, front: { ...sheet.tire.front, loadClass: 'LT-E' } },
}
const codesAt = (dangers: Parameters<typeof steps>[2], on: SpecificationSheet = sheet) =>
  steps(leak, on, dangers)
    .filter(({ wheel, height }) => wheel === 'LF' && height !== 'touching')
    .map(({ code }) => code)

describe('a tire with sealant in it', () => {
  const dangers = { sealant: ['LF'], runLow: [] } as const

  it('is purged outdoors, four times, by one who does it and one who knows, before its bead is broken', () => {
    const purge = find('LF.tire.purge', leak, sheet, dangers)
    expect(purge).toMatchObject({ closedBy: 'sealant.purged', needs: ['value', 'second-person'] })
    expect(purge.cautions).toEqual([{ number: 'CW-11', version: 1 }])
    expect(purge.waitsFor).toEqual(['LF.wheel.off'])
    expect(howOf(purge)).toMatch(/outdoors.*4 times/)
    expect(find('LF.tire.open', leak, sheet, dangers).waitsFor).toEqual(['LF.tire.purge'])
    expect(codesAt({ sealant: ['RF'], runLow: [] })).not.toContain('purge-sealant')
  })
})

describe('a tire that was run low', () => {
  const dangers = { sealant: [], runLow: ['LF'] } as const

  it('is looked at inside before a leak is searched with air, and before it is filled', () => {
    expect(codesAt(dangers).slice(0, 5)).toEqual([
      'take-wheel-off',
      'open-tire',
      'look-inside',
      'find-leak-after-look',
      'judge-leak',
    ])
    expect(find('LF.leak.judge', leak, sheet, dangers).waitsFor).toEqual(['LF.leak.find', 'LF.tire.inside'])
    expect(find('LF.tire.open', leak, sheet, dangers).cautions.map(({ number }) => number)).toContain('CW-12')
    expect(codesAt(dangers)).toContain('inflate-tire')
  })

  it.each([
    ['a light truck’s', truck],
    ['one that the sheet does not name', { ...sheet, tire: { ...sheet.tire, spare: null } }],
  ])('is filled in restraint where it is %s, with a stop at 20 psi to look and listen', (_, on) => {
    const wheel = on === truck ? 'LF' : 'SP'
    expect(careOf(on, { sealant: [], runLow: [wheel] }, wheel).restrained).toBe(true)
    const works: readonly Work[] = [{ kind: 'fit-tire', wheel }]
    const runLow = { sealant: [], runLow: [wheel] } as const
    for (const name of ['seat', 'inflate']) {
      const step = find(`${wheel}.tire.${name}`, works, on, runLow)
      expect(step.needs).toEqual(['value'])
      expect(step.cautions.map(({ number }) => number)).toContain('CW-13')
      expect(howOf(step)).toMatch(/remote valve.*20 psi.*look and listen/s)
    }
  })
})

describe('a tire that was run low and has sealant in it', () => {
  const dangers = { sealant: ['LF'], runLow: ['LF'] } as const

  it('is purged in restraint by a remote valve at low pressure; then its core comes out and it is opened', () => {
    expect(codesAt(dangers).slice(0, 4)).toEqual([
      'take-wheel-off',
      'purge-in-restraint',
      'open-tire',
      'look-inside',
    ])
    const purge = find('LF.tire.purge', leak, sheet, dangers)
    expect(howOf(purge)).toMatch(
      /outdoors.*restraining device.*remote valve.*no more than 20 psi.*core out.*is the bead broken/s,
    )
    expect(purge.cautions.map(({ number }) => number)).toEqual(['CW-11', 'CW-13'])
  })
})
