/** A sentence with its period: a time already ends in one, as in "8:41 p.m.". */
export const ended = (sentence: string): string => (sentence.endsWith('.') ? sentence : `${sentence}.`)
