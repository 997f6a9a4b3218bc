/** What is said of given evidence that cannot be read: what was found in a field, and what is allowed there. */
export const evidenceWords = {
  types: {
    number: 'a number',
    int: 'a whole number',
    string: 'text',
    boolean: 'true or false',
    array: 'a list',
    object: 'an object',
  } as Readonly<Record<string, string>>,
  found: {
    nothing: 'nothing',
    list: (length: number): string => `a list of ${length}`,
    object: 'an object',
    tooMuch: 'more than 1 MB',
    notJson: (why: string): string => `text that is not JSON (${why})`,
    moreFaults: (count: number): string => `${count} more faults`,
  },
  unknownField: (known: readonly string[]): string =>
    `no field of this name; known here are ${known.join(', ')}`,
  oneOf: (values: readonly string[]): string => `one of ${values.join(', ')}`,
  notEmpty: 'text that is not empty',
  over: (minimum: number | bigint, inclusive: boolean): string =>
    `${inclusive ? 'at least' : 'more than'} ${minimum}`,
  atMost: {
    text: (maximum: number | bigint): string => `text of at most ${maximum} characters`,
    list: (maximum: number | bigint): string => `at most ${maximum} entries`,
    number: (maximum: number | bigint): string => `at most ${maximum}`,
  },
  hexadecimal: 'hexadecimal digits, 0-9 and A-F, at most 16 of them',
  sensorId: 'the ID of a sensor; all zeros or all ones is what a reader shows when it read none',
  anotherValue: 'another value',
  range: (least: number, most: number, unit: string): string => `${least} to ${most} ${unit}`,
  answeredOnly: 'only on a wheel whose answer is answered',
  punctureOnly: 'only on a wheel whose tireDamage names a puncture',
  decimalDigits: 'digits 0-9, as notation is decimal',
  fieldPath: 'the path of an evidence field, such as controlModule.ids or wheels.RR.gauge',
  size: 'at most 1 MB; a vehicle takes about 5 kB',
  oneObject: 'one JSON object',
  none: 'none; fix these first',
  /** One fault on one line. */
  line: (field: string, found: string, allowed: string): string =>
    `${field}: found ${found}; allowed is ${allowed}`,
} as const
