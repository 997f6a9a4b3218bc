import type { Offer } from '@bayledger/reckoning/diagnosis/diagnosis'

/** Why an offer of the findings is not on the estimate. `wheels` is a list such as "left front"; empty: the vehicle. */
export type UnsoldOffersWording = Readonly<Record<Offer, (wheels: string) => string>>
