import type { LinkMessageWording } from '../link-message.ts'

export const linkMessage: LinkMessageWording = ({ name, vehicle, link }) =>
  `Hola, ${name}: aquí puede ver qué encontramos en su ${vehicle}, cuánto cuesta, y contestar: ${link}`
