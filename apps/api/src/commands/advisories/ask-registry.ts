import { spawn } from 'node:child_process'
import { text } from 'node:stream/consumers'
import * as z from 'zod'

/** One advisory about a package of ours; `id` is the last part of its address. */
export type Advisory = {
  readonly id: string
  readonly package: string
  readonly severity: string
  readonly title: string
  readonly address: string
}

export type Compared =
  | { readonly isKnown: true; readonly packages: number; readonly advisories: readonly Advisory[] }
  /** Nothing was compared. `why` is what npm says. */
  | { readonly isKnown: false; readonly why: string }

/** What `npm audit --json` prints, version 2, as far as it is read here. */
const Report = z.object({
  auditReportVersion: z.literal(2),
  vulnerabilities: z.record(
    z.string(),
    z.object({
      via: z.array(
        z.union([
          z.string(),
          z.object({ name: z.string(), severity: z.string(), title: z.string(), url: z.string() }),
        ]),
      ),
    }),
  ),
  metadata: z.object({ dependencies: z.object({ total: z.number() }) }),
})
const Trouble = z.object({ message: z.string() })

/** Compares the lock file of a folder with the advisories of a registry, npm's own setting where none is given. */
export const askRegistry = async (folder: string, registry: string | null): Promise<Compared> => {
  const npm = spawn(
    'npm',
    [
      'audit',
      '--json',
      '--package-lock-only',
      '--fetch-retries=0',
      ...(registry === null ? [] : [`--registry=${registry}`]),
    ],
    { cwd: folder, stdio: ['ignore', 'pipe', 'ignore'] },
  )
  const failed = new Promise<string>((resolve) => npm.once('error', ({ message }) => resolve(message)))
  const printed = await Promise.race([text(npm.stdout), failed])
  return readAudit(printed)
}

/** Reads what `npm audit --json` printed. Whatever is no report of its is a reason why nothing was compared. */
export const readAudit = (printed: string): Compared => {
  const read = parsed(printed)
  const report = Report.safeParse(read)
  if (!report.success) {
    const trouble = Trouble.safeParse(read)
    return { isKnown: false, why: trouble.success ? trouble.data.message : printed.trim().slice(0, 300) }
  }
  const advisories = new Map<string, Advisory>()
  for (const { via } of Object.values(report.data.vulnerabilities))
    for (const one of via) {
      // A name is a package that only rests on one with an advisory.
      if (typeof one === 'string') continue
      const id = one.url.split('/').at(-1) ?? one.url
      advisories.set(`${id} ${one.name}`, {
        ...{ id, package: one.name, severity: one.severity, title: one.title, address: one.url },
      })
    }
  return {
    isKnown: true,
    packages: report.data.metadata.dependencies.total,
    advisories: [...advisories.values()],
  }
}

const parsed = (printed: string): unknown => {
  try {
    return JSON.parse(printed)
  } catch {
    return null
  }
}
