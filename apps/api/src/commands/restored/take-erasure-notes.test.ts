import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { takeErasureNotes } from './take-erasure-notes.ts'

const shop = '019aabcd-0000-7000-8000-000000000001'
const nameOf = (end: string) => `erased-019aabcd-0000-7000-8000-00000000000${end}.json`

let place: string
const at = (...path: string[]) => join(place, ...path)
const put = (content: string, ...path: string[]) => {
  mkdirSync(at(...path.slice(0, -1)), { recursive: true })
  writeFileSync(at(...path), content)
}
const take = () => takeErasureNotes(at('own'), at('restored'))

beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), 'bayledger-notes-'))
})
afterEach(() => rmSync(place, { recursive: true, force: true }))

describe('the notes of erasures that a shop has on this machine', () => {
  it('are copied into the restored shop, of each shop, also where it has no folder yet', () => {
    put('one', 'own', shop, nameOf('1'))
    put('two', 'own', 'another-shop', nameOf('2'))
    expect(take()).toBe(2)
    expect(readFileSync(at('restored', shop, nameOf('1')), 'utf8')).toBe('one')
    expect(readFileSync(at('restored', 'another-shop', nameOf('2')), 'utf8')).toBe('two')
  })

  it('leave what is there as it is, are counted where they are new, and copied once', () => {
    put('of the backup', 'restored', shop, nameOf('1'))
    put('of this machine', 'own', shop, nameOf('1'))
    put('newer', 'own', shop, nameOf('2'))
    expect(take()).toBe(1)
    expect(readFileSync(at('restored', shop, nameOf('1')), 'utf8')).toBe('of the backup')
    expect(take()).toBe(0)
  })

  it('come alone: no digest, no other file, nothing that lies beside the shops’ folders', () => {
    put('{}', 'own', shop, '000001.json')
    put('{}', 'own', shop, 'erased-by-hand.json')
    put('{}', 'own', nameOf('3'))
    put('one', 'own', shop, nameOf('1'))
    expect(take()).toBe(1)
    expect(readdirSync(at('restored'))).toEqual([shop])
    expect(readdirSync(at('restored', shop))).toEqual([nameOf('1')])
  })

  it('are none where this machine has no digest folder', () => {
    expect(take()).toBe(0)
    expect(readdirSync(place)).toEqual([])
  })
})
