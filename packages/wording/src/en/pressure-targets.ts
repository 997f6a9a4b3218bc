import type { PressureTargetsWording } from '../pressure-targets.ts'

export const pressureTargets: PressureTargetsWording = {
  set: ({ psi, placardPsi, quality, capped, unmeasured }) => {
    if (unmeasured)
      return `The label's ${placardPsi} psi: nobody measured the tire, and a warm one will read low once it is cold. Measure it.`
    if (capped) return `Set ${psi.toFixed(1)} psi at most now, and set the tire again when it is cold.`
    const over = (psi - placardPsi).toFixed(1)
    return Number(over) === 0
      ? `The label's ${placardPsi} psi, as it is.`
      : `${over} psi over the label's ${placardPsi}, because the tire is warm (temperature ${quality}).`
  },
  refused: (refusal) =>
    refusal.why === 'no-figure'
      ? 'The sheet gives no pressure for this tire. Ask the desk.'
      : `The label says ${refusal.label.value} ${refusal.label.unit} and this tire's sidewall allows ${refusal.sidewallMaximum.value} ${refusal.sidewallMaximum.unit} at most. Do not inflate it. Read both figures again: the tire or one of them is wrong.`,
}
