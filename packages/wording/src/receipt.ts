/** What a customer reads of what they paid and got back. Sums and times are formatted. */
export type ReceiptWording = {
  readonly title: string
  readonly of: (customer: string, order: string, vehicle: string) => string
  readonly paid: (amount: string, method: string, at: string) => string
  readonly givenBack: (amount: string, method: string, at: string, why: string) => string
  /** What was paid less what was given back. */
  readonly kept: (amount: string) => string
}
