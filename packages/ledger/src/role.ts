/** What a person of the shop may be; one person may hold several roles. */
export const roles = ['advisor', 'technician', 'lead', 'manager', 'owner'] as const
export type Role = (typeof roles)[number]

/** Who meets customers: takes the complaint, prices the work, gets the answer, gives the keys back. */
export const deskRoles: readonly Role[] = ['advisor', 'lead', 'manager', 'owner']

/** Who takes customers' money; giving it back is narrower. */
export const moneyRoles: readonly Role[] = ['advisor', 'manager', 'owner']

/** Who gives customers their money back. */
export const refundRoles: readonly Role[] = ['manager', 'owner']

/** Who reads and works on the vehicle. An owner or a manager who does so holds a technician's role as well. */
export const bayRoles: readonly Role[] = ['technician', 'lead']

/** Who can judge the bay's work and answers for it, whether or not they do it. */
export const judgeRoles: readonly Role[] = ['technician', 'lead', 'manager', 'owner']
