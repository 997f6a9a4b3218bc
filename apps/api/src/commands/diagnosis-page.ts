import { ruleSetVersion } from '@bayledger/reckoning/diagnosis/diagnose'
import { ContradictionCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import { explains } from '@bayledger/reckoning/diagnosis/engine/explanation'
import { ruleOf } from '@bayledger/reckoning/diagnosis/engine/rule-of'
import { suppressions } from '@bayledger/reckoning/diagnosis/engine/suppression'
import {
  codesByGroup,
  type FindingCode,
  type FindingGroup,
} from '@bayledger/reckoning/diagnosis/finding-codes'
import type { Rule } from '@bayledger/reckoning/diagnosis/rule'
import { english } from '@bayledger/wording/en/english'

const groupTitles: Readonly<Record<FindingGroup, string>> = {
  ask: 'Ask before judging',
  stop: 'Stop',
  pressure: 'Pressure',
  system: 'Kind of system',
  sensor: 'Sensors',
  identity: 'Identity and place',
  vehicle: 'The vehicle',
  surroundings: 'Surroundings',
  history: 'History',
  advice: 'Advice',
}

const stopTitles = {
  'do-not-drive': 'Do not drive',
  'do-not-open-the-tire': 'Do not open the tire',
  'repair-before-release': 'Repair before release',
} as const

/** The rules as a page for people, written from the same values that the program runs. */
export const diagnosisPage = (): string =>
  [
    '# What Bayledger can find, and when',
    '',
    `Rule set ${ruleSetVersion}. This page is written by \`npm run docs:diagnosis\` from the rules themselves; edit those, not this.`,
    '',
    'The rules never read a fact that was not checked as no, fine or zero. Words in braces are filled in. The vehicle maker’s own instructions and figures come before anything here.',
    '',
    'Every finding says how sure it is. The tables give its usual confidence; more or less evidence changes it:',
    '',
    ...table(
      ['Word', 'Means'],
      Object.values(english.confidence).map(({ word, means }) => [word, means]),
    ),
    '',
    ...(Object.keys(codesByGroup) as FindingGroup[]).flatMap(groupSection),
    '## Which finding explains which light',
    '',
    'The cause is the first of these findings that was found and can explain what the light does. If there is none, a flash is `malfunction-unexplained` and a solid light is `warning-unexplained`, if their conditions hold; otherwise no cause is named.',
    '',
    ...table(
      ['The light', 'Is explained by'],
      Object.entries(explains).map(([light, codes]) => [light, codes.map(named).join(' · ')]),
    ),
    '',
    '## Which findings leave out others',
    '',
    ...table(
      ['While this is found', 'This is left out', 'Where'],
      suppressions.map(({ by, removes, where }) => [
        by.map(named).join(' or '),
        removes.map(named).join(', '),
        where === 'everywhere' ? 'at all' : 'on the same wheels',
      ]),
    ),
    '',
    '## What a person reads when facts contradict each other',
    '',
    ...table(
      ['Name', 'Says', 'Do'],
      ContradictionCode.options.map((code) => {
        const { says, do: action } = english.contradictions[code]({})
        return [named(code), says, action]
      }),
    ),
    '',
  ].join('\n')

const groupSection = (group: FindingGroup): string[] => [
  `## ${groupTitles[group]}`,
  '',
  ...table(
    ['Name', 'When', 'Means', 'How sure', 'Do', 'The customer hears'],
    codesByGroup[group].map((code) => ruleRow(ruleOf(code))),
  ),
  '',
]

const ruleRow = (rule: Rule): string[] => [
  `${english.findingTitles[rule.code]} (${named(rule.code)})`,
  rule.when,
  rule.stop === undefined ? rule.means : `${rule.means} **${stopTitles[rule.stop]}.**`,
  english.confidence[rule.confidence].word,
  english.findingActions[rule.code],
  sentenceOf(rule.code),
]

/** The ordinary wording for one wheel, its slots readable. */
const sentenceOf = (code: FindingCode): string => english.findingSentences[code].one.replaceAll(':p}', '}')

const named = (name: string): string => `\`${name}\``

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string[] =>
  [heads, heads.map(() => '---'), ...rows].map((cells) => `| ${cells.map(escaped).join(' | ')} |`)

const escaped = (cell: string): string => cell.replaceAll('|', '\\|')
