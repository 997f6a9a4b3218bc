/** "1 intento", "3 intentos". */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count.toLocaleString('es-US')} ${count === 1 ? one : many}`
