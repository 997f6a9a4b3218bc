/** Every address that a link of ours points at, and the patterns that the routers match. */
export const patterns = {
  desk: '/desk',
  deskSignIn: '/desk/sign-in',
  writeUp: '/desk/write-up',
  deskOrder: '/desk/orders/:orderId',
  bay: '/bay',
  enroll: '/bay/enroll',
  bayOrder: '/bay/orders/:orderId',
} as const

export const deskOrderPath = (orderId: string) => `/desk/orders/${encodeURIComponent(orderId)}`
/** The write-up with a known customer, and the vehicle if that is known too. */
export const writeUpPath = (customerId: string, vehicleId: string | null) => {
  const known = new URLSearchParams({ customer: customerId })
  if (vehicleId !== null) known.set('vehicle', vehicleId)
  return `${patterns.writeUp}?${known}`
}

export const bayOrderPath = (orderId: string) => `/bay/orders/${encodeURIComponent(orderId)}`

/** The secret of a customer's link stands behind the #, which no browser sends and no server logs. */
export const linkSecretFrom = (hash: string): string | null => {
  const secret = decodeURIComponent(hash.replace(/^#/, ''))
  return secret === '' ? null : secret
}
