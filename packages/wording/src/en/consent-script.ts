import type { ConsentScriptWording, ReadOut } from '../consent-script.ts'

export const consentScript: ConsentScriptWording = (of) => {
  const { vehicle, found, offers, ready, agreed, takenBack } = of
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
  return [
    `For your ${vehicle}:`,
    ...found,
    `We offer: ${lines}.`,
    ...offers.flatMap(({ title, cover }) => (cover === null ? [] : [`${title}: ${cover}`])),
    ...(ready === null ? [] : [`If you say yes now, it will be ready by ${ready}.`]),
    agreed === null
      ? `What do you want us to do?${back}`
      : `You say yes to ${answered(agreed, of)}${back} Is that right?`,
  ].join(' ')
}

const answered = (agreed: readonly string[], { look, total, withBefore }: ReadOut): string => {
  if (agreed.length > 0 && withBefore !== null)
    return `${agreed.join(' and ')}: ${total}. With what you agreed to before, it is ${withBefore} in all.`
  if (agreed.length > 0)
    return `${agreed.join(' and ')}: ${total} in all${look === null ? '' : `, with ${look} for the inspection`}.`
  return look === null
    ? 'none of it. You owe nothing for it.'
    : `none of it. You owe ${look} for the inspection, as agreed.`
}
