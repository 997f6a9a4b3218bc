import type { Advisory, Compared } from './ask-registry.ts'

/** 0: none is without an answer. 1: one is. 2: nothing was compared. */
export type Told = { readonly lines: readonly string[]; readonly status: 0 | 1 | 2 }

/** What the command prints; `page` is docs/supply-chain.md, whose table names each advisory that was answered. */
export const advisoryLines = (compared: Compared, page: string): Told => {
  if (!compared.isKnown)
    return {
      status: 2,
      lines: [
        `Nothing was compared: the registry gave no list of advisories (${compared.why}).`,
        'That is not the same as "none is known". Do one of these:',
        '  - run it on a machine that reaches npm’s own registry, not a mirror of it:',
        '    npm run -s advisories -- --registry https://registry.npmjs.org',
        '  - write the bill of materials (npm run -s sbom > sbom.json) and have any tool that reads CycloneDX 1.5 compare it.',
        'Then write the day and what was found into the table of docs/supply-chain.md.',
      ],
    }
  const isAnswered = ({ id }: Advisory): boolean => page.includes(id)
  const open = compared.advisories.filter((one) => !isAnswered(one))
  return {
    status: open.length === 0 ? 0 : 1,
    lines: [
      ...compared.advisories.map(
        (one) =>
          `${isAnswered(one) ? 'answered' : 'OPEN    '}  ${one.severity}  ${one.package}: ${one.title} (${one.address})`,
      ),
      ...(open.length === 0
        ? []
        : [
            'Renew the package, or add a row to the table of docs/supply-chain.md that says why it does not reach us.',
          ]),
      `packages ${compared.packages}, advisories ${compared.advisories.length}, without an answer ${open.length}`,
    ],
  }
}
