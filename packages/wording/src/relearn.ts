import type { RelearnTemplate } from '@bayledger/reckoning/relearn/relearn-template'

type Method = RelearnTemplate['method']

/** The words for making a vehicle learn its sensors or its tires. */
export type RelearnWording = {
  /** One paragraph: the general words for the method, with the sheet's own words and figures filled in. */
  readonly procedure: {
    readonly [M in Method]: (template: RelearnTemplate & { readonly method: M }) => string
  }
  /** For a sheet without a procedure: none is guessed. */
  readonly notOnSheet: string
}

/** The procedure of a sheet in words. The vehicle maker's procedure, which the sheet writes down, governs. */
export const relearnWords = ({ procedure }: RelearnWording, template: RelearnTemplate): string =>
  procedure[template.method](template as never)
