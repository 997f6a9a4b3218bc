/** What a person must enter before the check can answer. */
export type MissingForLoadCheck =
  | 'newOnLabel'
  | 'chosen'
  | 'sidewallMaximum'
  | 'originalLoadIndex'
  | 'fittedLoadIndex'
  | 'originalSpeed'
  | 'fittedSpeed'
  | 'originalTableLoad'
  | 'fittedTableLoad'

/** Why the check says no. */
export type LoadRefusal = 'over-sidewall-maximum' | 'slower-symbol' | 'lower-index' | 'carries-less'
