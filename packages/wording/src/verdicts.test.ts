import type { FixedVerdict } from '@bayledger/ledger/questions/verdicts'
import { describe, expect, it } from 'vitest'
import { faultOf } from '../test-support/plain-sentence.ts'
import { english } from './en/english.ts'
import { fixedSentence, fixedWords } from './verdicts.ts'

const { verdicts } = english

describe('whether it is fixed', () => {
  it.each<FixedVerdict>([
    { verdict: 'proven', minutes: 22, sensors: 4 },
    { verdict: 'proven', minutes: 22, sensors: null },
    { verdict: 'not-yet-proven', why: 'relearn-set-aside' },
    { verdict: 'not-yet-proven', why: 'not-driven-enough', minutes: 0, needed: 20 },
    { verdict: 'not-yet-proven', why: 'not-driven-enough', minutes: 13, needed: 20 },
    { verdict: 'not-yet-proven', why: 'drive-doubtful', minutes: 3, needed: 20 },
    { verdict: 'not-yet-proven', why: 'no-findings' },
    { verdict: 'not-yet-proven', why: 'nothing-found' },
    { verdict: 'not-yet-proven', why: 'sensors-unrecognized', minutes: 22, recognized: 3, sensors: 4 },
    { verdict: 'not-fixed', why: 'nothing-authorized' },
    { verdict: 'not-fixed', why: 'danger-left' },
    { verdict: 'not-fixed', why: 'light-on-drive' },
    { verdict: 'not-fixed', why: 'light-on-at-closing' },
    { verdict: 'not-fixed', why: 'lamp-dark' },
    { verdict: 'not-fixed', why: 'relearn-refused' },
    { verdict: 'not-fixed', why: 'sensor-silent', wheel: 'LR' },
    { verdict: 'not-fixed', why: 'id-misplaced', wheel: 'LR' },
  ])('%j is said in one word and a plain sentence', (verdict) => {
    const { word, words } = fixedWords(verdicts, verdict)
    expect(['Proven', 'Not sure yet', 'Not fixed']).toContain(word)
    expect(words).toMatch(/^[a-z]/)
    expect(faultOf(fixedSentence(verdicts, verdict))).toBeNull()
  })
})

it.each(Object.entries(verdicts.drive))('%s answers "Can I drive it?" in a plain sentence', (_, words) => {
  expect(faultOf(words)).toBeNull()
})
