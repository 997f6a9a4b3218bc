import type { ConsentScriptWording } from '../consent-script.ts'

export const consentScript: ConsentScriptWording = ({ vehicle, offers, agreed, total, takenBack }) => {
  const back =
    takenBack.length === 0 ? '' : ` Usted retira su Sí a: ${takenBack.join('; ')}. No lo hemos empezado.`
  if (offers.length === 0) return `Para su ${vehicle}:${back} ¿Es correcto?`
  const lines = offers
    .map(({ title, price, insteadOf }) =>
      insteadOf === null
        ? `${title}, ${price} con impuesto`
        : `o, en lugar de ${insteadOf}: ${title}, ${price} con impuesto`,
    )
    .join('; ')
  return `Para su ${vehicle} le leo: ${lines}. Usted dice que sí a: ${agreed.length === 0 ? 'nada de esto' : agreed.join('; ')}. Son ${total} en total.${back} ¿Es correcto?`
}
