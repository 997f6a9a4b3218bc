/**
 * From where a call comes, and where this service is reached on the machine itself. `address` is the caller's network address,
 * `browser` what the caller's program says of itself, `origin` scheme, name and port of the page that calls.
 */
export type CalledFrom = {
  readonly isThisMachine: boolean
  readonly addressHere: string
  readonly address: string
  readonly browser: string | null
  readonly origin: string
}
