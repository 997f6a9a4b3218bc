/** Read by Prisma's command line; a plain object, because the command line checks it anyway. */
export default {
  schema: 'schema.prisma',
  migrations: { path: 'migrations' },
}
