import type { ConsentScriptWording, ReadOut } from '../consent-script.ts'
import { ended } from './ended.ts'

export const consentScript: ConsentScriptWording = (of) => {
  const { vehicle, found, offers, ready, agreed, takenBack } = of
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
  return [
    `Para su ${vehicle}:`,
    ...found,
    `Le ofrecemos: ${lines}.`,
    ...offers.flatMap(({ title, cover }) => (cover === null ? [] : [`${title}: ${cover}`])),
    ...(ready === null ? [] : [ended(`Si dice que sí ahora, estará listo para: ${ready}`)]),
    agreed === null
      ? `¿Qué quiere que hagamos?${back}`
      : `Usted dice que sí a: ${answered(agreed, of)}${back} ¿Es correcto?`,
  ].join(' ')
}

const answered = (agreed: readonly string[], { look, total, withBefore }: ReadOut): string => {
  if (agreed.length > 0 && withBefore !== null)
    return `${agreed.join('; ')}. Son ${total}. Con lo que ya aceptó antes, son ${withBefore} en total.`
  if (agreed.length > 0)
    return `${agreed.join('; ')}. Son ${total} en total${look === null ? '' : `, con ${look} por la inspección`}.`
  return look === null
    ? 'nada de esto. No debe nada por esto.'
    : `nada de esto. Debe ${look} por la inspección, como se acordó.`
}
