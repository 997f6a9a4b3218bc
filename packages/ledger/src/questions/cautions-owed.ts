import type { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'

type Replaceable = {
  readonly bundleKey: string
  readonly alternativeTo: string | null
}

/**
 * The cautions that go with a No or a Not today to a bundle. None where the customer said Yes to what replaces it: whoever
 * takes four sensors is warned of a low tire, although they do not take the one.
 */
export const cautionsOwed = <Caution extends Pick<CautionReference, 'number'>>(
  bundle: Replaceable & { readonly cautions: readonly Caution[] },
  bundles: readonly Replaceable[],
  authorized: ReadonlySet<string>,
): readonly Caution[] =>
  bundles.some(
    ({ bundleKey, alternativeTo }) => alternativeTo === bundle.bundleKey && authorized.has(bundleKey),
  )
    ? []
    : bundle.cautions
