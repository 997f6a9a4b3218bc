import type { FindingCode } from '../finding-codes.ts'
import type { Match } from '../rule.ts'

/** One finding makes another one idle: everywhere, or only on the wheels that it names itself. */
type Suppression = {
  readonly by: readonly FindingCode[]
  readonly removes: readonly FindingCode[]
  readonly where: 'everywhere' | 'on-its-wheels' | 'everywhere-if-it-shares-a-wheel'
}

/** Applied in this order; a finding that was removed removes nothing further down. */
export const suppressions: readonly Suppression[] = [
  {
    by: ['light-not-witnessed', 'retry-silent-wheel', 'cross-read-suspected', 'system-unknown'],
    removes: ['no-warning-given'],
    where: 'everywhere',
  },
  {
    by: ['system-kind-contradicted'],
    removes: ['set-then-reset', 'reset-only', 'reset-and-recheck', 'no-warning-given'],
    where: 'everywhere',
  },
  {
    by: ['sensor-does-not-follow', 'sensor-reads-wrong'],
    removes: ['no-warning-given'],
    where: 'on-its-wheels',
  },
  // "Nothing is broken" is never said beside a tire that may be broken inside.
  {
    by: ['run-low-damage-possible'],
    removes: ['cold-weather', 'weather-and-seepage', 'altitude-change'],
    where: 'everywhere-if-it-shares-a-wheel',
  },
  { by: ['altitude-change'], removes: ['cold-weather', 'weather-and-seepage'], where: 'everywhere' },
  {
    by: ['cold-weather', 'weather-and-seepage', 'altitude-change'],
    removes: ['tire-low'],
    where: 'on-its-wheels',
  },
  {
    by: ['hot-corner'],
    removes: ['slow-loss-suspected', 'slow-leak', 'warm-tire-hides-low', 'over-inflated', 'under-placard'],
    where: 'on-its-wheels',
  },
  { by: ['tire-low'], removes: ['warm-tire-hides-low'], where: 'on-its-wheels' },
  {
    by: ['tire-low', 'cold-weather', 'weather-and-seepage', 'axle-pressures-exchanged', 'altitude-change'],
    removes: ['slow-loss-suspected'],
    where: 'on-its-wheels',
  },
  {
    by: [
      'tire-low',
      'cold-weather',
      'weather-and-seepage',
      'slow-loss-suspected',
      'axle-pressures-exchanged',
      'altitude-change',
      'warm-tire-hides-low',
      'run-low-damage-possible',
    ],
    removes: ['under-placard'],
    where: 'on-its-wheels',
  },
  { by: ['no-wheel-answers'], removes: ['sensor-silent'], where: 'everywhere' },
  {
    by: ['temporary-spare-fitted'],
    removes: ['over-inflated', 'under-placard', 'sensor-silent', 'no-sensor-on-arrival'],
    where: 'on-its-wheels',
  },
  {
    by: ['no-sensor-on-arrival'],
    removes: ['sensor-silent'],
    where: 'on-its-wheels',
  },
  {
    by: ['sensors-refer-to-sea-level', 'gauge-suspect'],
    removes: ['sensor-reads-wrong'],
    where: 'everywhere',
  },
  {
    by: ['sensor-does-not-follow', 'sensor-asleep'],
    removes: ['sensor-reads-wrong'],
    where: 'on-its-wheels',
  },
  { by: ['sensor-asleep'], removes: ['protocol-wrong', 'id-not-stored'], where: 'on-its-wheels' },
  { by: ['control-module-blank'], removes: ['other-wheel-set'], where: 'everywhere' },
  {
    by: ['control-module-blank', 'other-wheel-set'],
    removes: ['id-not-stored', 'stored-id-unheard'],
    where: 'everywhere',
  },
  {
    by: ['cross-read-suspected'],
    removes: ['id-not-stored', 'stored-id-unheard', 'rotated-without-relearn', 'id-duplicated'],
    where: 'on-its-wheels',
  },
  { by: ['spare-rotated-without-relearn'], removes: ['rotated-without-relearn'], where: 'everywhere' },
  { by: ['id-duplicated'], removes: ['id-not-stored', 'rotated-without-relearn'], where: 'on-its-wheels' },
  {
    by: ['frequency-wrong', 'wheel-from-another-vehicle'],
    removes: ['id-not-stored'],
    where: 'on-its-wheels',
  },
]

/** Removes from the matches what others make idle; a match without any wheel left is removed. */
export const suppress = (matches: Map<FindingCode, Match>): void => {
  for (const { by, removes, where } of suppressions) {
    for (const remover of by) {
      const at = matches.get(remover)?.wheels
      if (at === undefined) continue
      for (const code of removes) {
        const match = matches.get(code)
        if (match === undefined) continue
        const left = match.wheels.filter((wheel) => !at.includes(wheel))
        if (where === 'everywhere-if-it-shares-a-wheel' && left.length === match.wheels.length) continue
        const wheels = where === 'on-its-wheels' ? left : []
        if (wheels.length === 0) matches.delete(code)
        else if (wheels.length < match.wheels.length) matches.set(code, { ...match, wheels })
      }
    }
  }
}
