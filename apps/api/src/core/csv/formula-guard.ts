/**
 * Spreadsheet programs run a cell that begins with one of these as a formula (OWASP, "CSV Injection": equals, plus,
 * minus, at, tab, carriage return, line feed and their full-width forms). A plain number may begin with a sign.
 */
const startsFormula = /^'*[=+\-@\t\r\n＝＋－＠]/u
const plainNumber = /^[+-]?\d+(\.\d+)?$/

/** A cell that a spreadsheet program shows as text: a single quote goes before what would be run as a formula. */
export const guardFormula = (text: string): string =>
  startsFormula.test(text) && !plainNumber.test(text) ? `'${text}` : text

/** The text before `guardFormula`: of a quote that goes before a formula, exactly one is taken away. */
export const unguardFormula = (cell: string): string =>
  cell.startsWith("'") && startsFormula.test(cell) ? cell.slice(1) : cell
