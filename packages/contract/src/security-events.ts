/** What happened at the doors of a shop. A kind is never taken out: what was written with it is read for 400 days. */
export const securityEventKinds = [
  'signed-in',
  'sign-in-failed',
  'pin-failed',
  'password-failed',
  'wait-began',
  'signed-out',
  'session-ended',
  'proven-again',
] as const
export type SecurityEventKind = (typeof securityEventKinds)[number]
