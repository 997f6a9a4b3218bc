/** The roles of a shop; one person may hold several. */
export const roles = ['advisor', 'technician', 'lead', 'manager', 'owner'] as const
export type Role = (typeof roles)[number]

/** Those who meet customers: they take the complaint, price the work, get the answer and give the keys back. */
export const deskRoles: readonly Role[] = ['advisor', 'lead', 'manager', 'owner']

/** Those who take customers' money; fewer may give it back. */
export const moneyRoles: readonly Role[] = ['advisor', 'manager', 'owner']

/** Those who may give customers their money back. */
export const refundRoles: readonly Role[] = ['manager', 'owner']

/** Those who say why a vehicle came back after our work, and may decide against the terms what the warranty covers. */
export const coverRoles: readonly Role[] = ['lead', 'manager', 'owner']

/** Those who read and work on the vehicle. An owner or a manager who does so holds a technician's role as well. */
export const bayRoles: readonly Role[] = ['technician', 'lead']

/** Those who can judge the bay's work and are responsible for it, whether or not they do it. */
export const judgeRoles: readonly Role[] = ['technician', 'lead', 'manager', 'owner']
