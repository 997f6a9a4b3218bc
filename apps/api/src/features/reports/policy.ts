/** Raised whenever a report's content or layout changes; every sealed report's entry carries it. */
export const templateVersion = 6

/** A report's number: its order's, and how many went before it. */
export const reportNumber = (orderNumber: string, earlier: number): string => `${orderNumber}-R${earlier + 1}`

/** The number that a PDF claims as ours, from the plain text of its title; `null` when it claims none. */
export const claimedNumber = (bytes: Uint8Array): string | null =>
  /Tire-pressure report ([A-Za-z]{1,4}-\d{1,9}-R\d{1,3}), order/.exec(
    Buffer.from(bytes).toString('latin1'),
  )?.[1] ?? null
