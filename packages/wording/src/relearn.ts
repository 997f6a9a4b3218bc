import type { RelearnTemplate } from '@bayledger/reckoning/relearn/relearn-template'

type Method = RelearnTemplate['method']

/** How a vehicle is made to learn its sensors or its tires. */
export type RelearnWording = {
  /** As one paragraph: what holds for the method anywhere, with the sheet's own words and figures in their places. */
  readonly procedure: {
    readonly [M in Method]: (template: RelearnTemplate & { readonly method: M }) => string
  }
  /** Where the sheet has no procedure: none is guessed. */
  readonly notOnSheet: string
}

/** The procedure of a sheet in words. The vehicle maker's procedure, which the sheet writes down, governs. */
export const relearnWords = ({ procedure }: RelearnWording, template: RelearnTemplate): string =>
  procedure[template.method](template as never)
