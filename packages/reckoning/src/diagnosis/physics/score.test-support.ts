import type { Finding, FindingCode } from '../diagnosis.ts'
import type { Expectation, Named } from './expectation.test-support.ts'
import { corners } from './vehicle.test-support.ts'

/** What a diagnosis got wrong, in words for whoever fixes a rule; nothing where it is right. */
export type Score = {
  readonly verdict: FindingCode | 'nothing'
  readonly missedStops: readonly string[]
  readonly wrong: readonly string[]
}

export const scoreOf = (
  expected: Expectation,
  { primary, findings }: { readonly primary: FindingCode | null; readonly findings: readonly Finding[] },
): Score => {
  const isFound = ({ codes, wheels }: Named): boolean => {
    const found = findings.filter(({ code }) => codes.includes(code))
    return found.length > 0 && sameWheels(new Set(found.flatMap((finding) => finding.wheels)), wheels)
  }
  const missedStops = expected.stops
    .filter(({ codes, wheels }) => !wheels.every((wheel) => stoppedAt(findings, codes, wheel)))
    .map(inWords)
  const primaryIsRight = primary === null ? expected.primary.length === 0 : expected.primary.includes(primary)
  return {
    verdict: primary ?? findings.find(isVerdict)?.code ?? 'nothing',
    missedStops,
    wrong: [
      ...missedStops.map((words) => `missed the stop ${words}`),
      ...(primaryIsRight
        ? []
        : [`primary ${primary ?? 'none'}, not ${expected.primary.join(' or ') || 'none'}`]),
      ...expected.names.filter((name) => !isFound(name)).map((name) => `did not name ${inWords(name)}`),
      ...falseStops(expected, findings),
      ...unasked(expected, findings),
    ],
  }
}

const inWords = ({ codes, wheels }: Named): string => `${codes.join('/')}@${wheels.join('+') || 'all'}`

const isVerdict = ({ kind }: Finding): boolean => kind === 'stop' || kind === 'cause' || kind === 'also'

const sameWheels = (found: ReadonlySet<string>, wanted: readonly string[]): boolean =>
  wanted.length === 0 || (found.size === wanted.length && wanted.every((wheel) => found.has(wheel)))

const stoppedAt = (findings: readonly Finding[], codes: readonly FindingCode[], wheel: string): boolean =>
  findings.some(
    (finding) =>
      codes.includes(finding.code) && finding.kind === 'stop' && finding.wheels.includes(wheel as never),
  )

const falseStops = ({ stops }: Expectation, findings: readonly Finding[]): string[] =>
  findings
    .filter(({ kind }) => kind === 'stop')
    .flatMap(({ code, wheels }) =>
      wheels
        .filter(
          (wheel) => !stops.some((stop) => stop.codes.includes(code) && stop.wheels.includes(wheel as never)),
        )
        .map((wheel) => `false stop ${code}@${wheel}`),
    )

const unasked = ({ asks }: Expectation, findings: readonly Finding[]): string[] =>
  findings.flatMap(({ code, wheels, offers }) => {
    const where = wheels.length === 0 ? corners : corners.filter((corner) => wheels.includes(corner))
    return offers.flatMap((offer) =>
      where
        .filter((corner) => !asks.get(corner)?.has(offer))
        .map((corner) => `${code} offers ${offer}@${corner}`),
    )
  })
