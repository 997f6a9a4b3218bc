import type { Torque } from '@bayledger/reckoning/quantity'
import type { TorqueRound } from '@bayledger/reckoning/torque/torque-rounds'

export type RoundAtHand = TorqueRound | 'check'

/** "Round at 83 lbf·ft: 5 of 5 clicked · 0 moved": the record that a seal confirms. */
export const sealWords = (
  round: RoundAtHand,
  figure: Torque,
  count: number,
  moved: readonly number[],
): string => {
  const at = `${figure.value} ${figure.unit}`
  if (round === 'half') return `Round at ${at}, about half: all ${count} snug`
  const name = round === 'check' ? `Check at ${at}` : `Round at ${at}`
  return `${name}: ${count} of ${count} clicked · ${moved.length} moved`
}

/** What follows from nuts that moved; `null` when none did or when moving is no news in this round. */
export const movedWords = (round: RoundAtHand, moved: readonly number[], fastener: string): string | null => {
  if (moved.length === 0) return null
  const named = `${fastener} ${moved.join(', ')} moved`
  if (round === 'again') return `${named}: the wheel starts its round at the figure again.`
  if (round === 'check') return `${named}: the wheel goes back to its round at the figure.`
  return `${named}: on record; the next round must find all of them tight.`
}

/** What to do in this round. A person who torqued the wheel is told that another person makes the check. */
export const roundHow = (round: RoundAtHand, fastener: string, isDoer: boolean): string => {
  switch (round) {
    case 'half':
      return 'About half, to draw the wheel flat. It is not tight yet.'
    case 'full':
      return `Pull smoothly, one click, stop. Tap a ${fastener} only if it moved late.`
    case 'again':
      return `Every ${fastener} clicks without turning. Tap one that turned.`
    case 'check':
      return isDoer
        ? 'You torqued this wheel: another person goes round and seals it with their PIN.'
        : `Go round with the wrench. Tap a ${fastener} that turned; seal it with your PIN.`
  }
}
