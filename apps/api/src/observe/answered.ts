/** A request that was answered, with nothing in it that a person typed. */
export type Answered = {
  readonly method: string
  /** The route's pattern, such as `/api/orders/:orderId`; `none` where no route matched. */
  readonly route: string
  readonly status: number
  readonly seconds: number
  readonly requestId: string
  /** The header of that name (W3C Trace Context), by which a caller continues its trace. */
  readonly traceparent: string | null
}
