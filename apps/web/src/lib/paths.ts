/** Every address that a link of ours points at, and the patterns that the routers match. */
export const patterns = {
  desk: '/desk',
  deskSignIn: '/desk/sign-in',
  firstShop: '/desk/first-shop',
  ownRecord: '/desk/own-record',
  writeUp: '/desk/write-up',
  deskOrder: '/desk/orders/:orderId',
  day: '/desk/day',
  wall: '/desk/wall',
  print: '/desk/print/:what/:orderId?',
  vehicle: '/desk/vehicles/:vehicleId',
  customer: '/desk/customers/:customerId',
  tray: '/desk/refused',
  tablets: '/desk/tablets',
  shop: '/desk/shop/:page?/:recordId?',
  bay: '/bay',
  enroll: '/bay/enroll',
  bayOrder: '/bay/orders/:orderId',
} as const

/** A page for paper: the floor list, or something of an order. */
export const printPath = (what: 'floor' | 'tags' | 'work' | 'receipt', orderId?: string) =>
  orderId === undefined ? `/desk/print/${what}` : `/desk/print/${what}/${encodeURIComponent(orderId)}`

export const deskOrderPath = (orderId: string) => `/desk/orders/${encodeURIComponent(orderId)}`

/** A page of the owner's screens, with one of its records open; without a page their first one. */
export const shopPath = (page?: string, recordId?: string | null) =>
  ['/desk/shop', page, recordId ?? undefined]
    .filter((part) => part !== undefined)
    .map((part, index) => (index === 0 ? part : encodeURIComponent(part)))
    .join('/')

/** The sign-in that goes on to where the person wanted to be. */
export const signInPath = (path: string) => `${patterns.deskSignIn}?${new URLSearchParams({ onward: path })}`

/** Where to go on from a sign-in: a path of the desk, never another site that someone wrote into the address. */
export const pathAfterSignIn = (search: string): string => {
  const onward = new URLSearchParams(search).get('onward') ?? patterns.desk
  return /^\/desk(\/|\?|$)/.test(onward) ? onward : patterns.desk
}

/** What the shop knows of a vehicle. */
export const vehiclePath = (vehicleId: string) => `/desk/vehicles/${encodeURIComponent(vehicleId)}`

/** What the shop keeps of a customer. */
export const customerPath = (customerId: string) => `/desk/customers/${encodeURIComponent(customerId)}`

/** The write-up with a known customer, the vehicle if that is known too, and the order after which it came back. */
export const writeUpPath = (
  customerId: string,
  vehicleId: string | null,
  comebackOf: string | null = null,
) => {
  const known = new URLSearchParams({ customer: customerId })
  if (vehicleId !== null) known.set('vehicle', vehicleId)
  if (comebackOf !== null) known.set('after', comebackOf)
  return `${patterns.writeUp}?${known}`
}

export const bayOrderPath = (orderId: string) => `/bay/orders/${encodeURIComponent(orderId)}`

/** The secret of a customer's link is behind the #, which no browser sends and no server logs. */
export const linkSecretFrom = (hash: string): string | null => {
  try {
    const secret = decodeURIComponent(hash.replace(/^#/, ''))
    return secret === '' ? null : secret
  } catch {
    return null
  }
}
