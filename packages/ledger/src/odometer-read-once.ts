/** A payload of the version before an unlikely odometer could be confirmed, as one that nobody confirmed. */
export const odometerReadOnce = <Payload extends object>(
  payload: Payload,
): Payload & { readonly odometerConfirmed: false } => ({ ...payload, odometerConfirmed: false })
