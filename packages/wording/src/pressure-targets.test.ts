import type { PressureTarget } from '@bayledger/ledger/questions/pressure-target'
import { describe, expect, it } from 'vitest'
import { pressureTargets } from './en/pressure-targets.ts'
import { pressureTargetWords } from './pressure-targets.ts'

const warm = {
  ok: true,
  psi: 40.2,
  placardPsi: 35,
  sidewallMaximumPsi: 44,
  quality: 'measured',
  capped: false,
  unmeasured: false,
} as const
const words = (target: PressureTarget) => pressureTargetWords(pressureTargets, target)

describe('the note beside a target pressure', () => {
  it('says how far over the label it is and how the temperature is known', () => {
    expect(words(warm)).toBe("5.2 psi over the label's 35, because the tire is warm (temperature measured).")
    expect(words({ ...warm, psi: 39.1, quality: 'estimated' })).toBe(
      "4.1 psi over the label's 35, because the tire is warm (temperature estimated).",
    )
  })

  it('says that the label is used as it is', () => {
    expect(words({ ...warm, psi: 35, quality: 'assumed' })).toBe("The label's 35 psi, as it is.")
  })

  it('says that a tire held at a cap is finished cold', () => {
    expect(words({ ...warm, psi: 41, capped: true })).toBe(
      'Set 41.0 psi at most now, and set the tire again when it is cold.',
    )
  })

  it('warns where nobody measured a tire that may be warm', () => {
    expect(words({ ...warm, psi: 35, quality: 'assumed', unmeasured: true })).toBe(
      "The label's 35 psi: nobody measured the tire, and a warm one will read low once it is cold. Measure it.",
    )
  })

  it('says why there is no target', () => {
    expect(words({ ok: false, refusal: { why: 'no-figure' } })).toBe(
      'The sheet gives no pressure for this tire. Ask the desk.',
    )
    expect(
      words({
        ok: false,
        refusal: {
          why: 'label-over-sidewall',
          label: { value: 60, unit: 'psi' },
          sidewallMaximum: { value: 51, unit: 'psi' },
        },
      }),
    ).toBe(
      "The label says 60 psi and this tire's sidewall allows 51 psi at most. Do not inflate it. Read both figures again: the tire or one of them is wrong.",
    )
  })
})
