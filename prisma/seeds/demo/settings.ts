export const lookFeeCents = 5_200
export const settings = {}
