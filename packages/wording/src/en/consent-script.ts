import type { ConsentScriptWording } from '../consent-script.ts'

export const consentScript: ConsentScriptWording = ({ vehicle, offers, agreed, total, takenBack }) => {
  const back =
    takenBack.length === 0
      ? ''
      : ` You take back your Yes to ${takenBack.join(' and ')}; we have not begun it.`
  if (offers.length === 0) return `For your ${vehicle}:${back} Is that right?`
  const lines = offers
    .map(({ title, price, insteadOf }) =>
      insteadOf === null
        ? `${title}, ${price} with tax`
        : `or, in place of ${insteadOf}: ${title}, ${price} with tax`,
    )
    .join('; ')
  return `For your ${vehicle} I read: ${lines}. You say yes to ${agreed.length === 0 ? 'none of it' : agreed.join(' and ')}: ${total} in all.${back} Is that right?`
}
