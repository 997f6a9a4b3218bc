/** Special characters of LIKE, taken as themselves; Prisma's `contains` leaves them as they are. */
export const likeText = (text: string): string => text.replace(/[\\%_]/g, '\\$&')
