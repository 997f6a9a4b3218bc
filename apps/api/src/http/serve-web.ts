import { existsSync } from 'node:fs'
import { join } from 'node:path'
import fastifyStatic from '@fastify/static'
import type { FastifyInstance, FastifyReply } from 'fastify'
import { staffPageHeaders } from './security-headers.ts'

/** The page of each face, and the addresses that open it. */
const pages = {
  'desk.html': ['/desk', '/desk/*'],
  'bay.html': ['/bay', '/bay/*'],
  'customer.html': ['/customer', '/check'],
} as const

const staffPages = ['desk.html', 'bay.html']

/** Serves the three built faces: names with a hash in them for a year, pages never from a cache. */
export const serveWeb = async (app: FastifyInstance, folder: string): Promise<void> => {
  for (const page of Object.keys(pages))
    if (!existsSync(join(folder, page)))
      throw new Error(`${join(folder, page)} is missing. Build the faces first: npm run build`)
  await app.register(fastifyStatic, {
    root: folder,
    index: false,
    dotfiles: 'ignore',
    // A route for each file that there is: no other path reaches the disk.
    wildcard: false,
    preCompressed: true,
    setHeaders: (response, path) => {
      const isHashed = path.includes(`${join('/', 'assets', '/')}`)
      response.header('cache-control', isHashed ? 'public, max-age=31536000, immutable' : 'no-cache')
      // By file and not by address: an installed bay keeps the page under its file's name.
      if (staffPages.some((page) => path.endsWith(page))) response.headers(staffPageHeaders)
    },
  })
  const page = (name: string) => (_request: unknown, reply: FastifyReply) =>
    reply.header('cache-control', 'no-cache').sendFile(name, { cacheControl: false })
  for (const [name, addresses] of Object.entries(pages))
    for (const address of addresses) app.get(address, page(name))
  app.get('/', (_request, reply) => reply.redirect('/desk'))
}
