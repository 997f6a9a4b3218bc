/** What is wrong with a first and a last day as they are typed, in words; `undefined`: nothing. */
export const faultOfDays = ({
  from,
  to,
}: {
  readonly from: string
  readonly to: string
}): string | undefined =>
  from === '' || to === ''
    ? 'Choose the first and the last day.'
    : to < from
      ? 'The last day is before the first.'
      : undefined
