/** One thing that does not hold, in words: where, and what is wrong there. */
export type Fault = { readonly where: string; readonly what: string }

export const faultLine = ({ where, what }: Fault): string => `${where}: ${what}`
