type Said = { readonly title: string; readonly detail: string }

/** What screens of every face say, the customer's among them. */
export type ScreensWording = {
  readonly failedToShow: Said
  readonly unreachable: Said
  /** An answer that is none of the server's, with its HTTP status. */
  readonly notOurs: (status: number) => Said
  /** A wheel that is off the vehicle, in the ring that is drawn for it. */
  readonly wheelOff: { readonly ring: string; readonly why: string }
}
