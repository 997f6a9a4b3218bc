import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { t2603Sensor } from '../orders/t-2603.ts'
import { sheets } from '../sheets.ts'

/**
 * Draws the demo's photos anew, beside this file: `node prisma/seeds/demo/pictures/draw.ts`. They are kept as files,
 * because an entry names the digest of its photo and another machine's fonts would make another one.
 */
const wide = 960
const high = 720

const picture = (content: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="0 0 ${wide} ${high}" font-family="DejaVu Sans">
  <defs>
    <radialGradient id="lamp" cx="0.35" cy="0.25" r="0.95">
      <stop offset="0" stop-color="#fff" stop-opacity="0.28"/><stop offset="1" stop-color="#000" stop-opacity="0.45"/>
    </radialGradient>
    <linearGradient id="rubber" x1="0" x2="1" y1="0" y2="1">
      <stop offset="0" stop-color="#4b4a48"/><stop offset="1" stop-color="#232221"/>
    </linearGradient>
  </defs>
  ${content}
  <rect width="${wide}" height="${high}" fill="url(#lamp)"/>
</svg>`

const doorLabel = (): string => {
  const { placard, tire } = sheets.tarn
  const row = (y: number, place: string, size: string, psi: number, kPa: number) =>
    `<text x="205" y="${y}">${place}</text><text x="360" y="${y}">${size}</text><text x="600" y="${y}">${kPa} kPa, ${psi} psi</text>`
  const figures = (axle: 'front' | 'rear' | 'spare') => {
    const printed = placard[axle]
    return [printed?.psi ?? 0, printed?.kPa ?? 0] as const
  }
  return picture(`<rect width="${wide}" height="${high}" fill="#5d6a72"/>
  <path d="M0 0H140V720H0Z" fill="#46525a"/><path d="M140 0V720" stroke="#323c43" stroke-width="10"/>
  <g transform="rotate(-2 480 360)">
    <rect x="180" y="190" width="660" height="330" rx="14" fill="#f4f1e4"/>
    <rect x="180" y="190" width="660" height="62" rx="14" fill="#22282c"/>
    <text x="205" y="233" font-size="30" font-weight="bold" fill="#f4f1e4">TIRE AND LOADING INFORMATION</text>
    <g font-size="25" fill="#22282c">
      ${row(330, 'FRONT', '235/60R18 103H', ...figures('front'))}
      ${row(385, 'REAR', '235/60R18 103H', ...figures('rear'))}
      ${row(440, 'SPARE', tire.spare?.size ?? '', ...figures('spare'))}
    </g>
    <path d="M205 285H815M205 350H815M205 405H815M205 460H815" stroke="#22282c" stroke-width="2"/>
    <text x="205" y="500" font-size="18" fill="#22282c">COLD TIRE PRESSURE   SEE OWNER HANDBOOK</text>
  </g>`)
}

const sensorNumber = (): string =>
  picture(`<rect width="${wide}" height="${high}" fill="#7d756a"/>
  <path d="M0 560H960V720H0Z" fill="#695f54"/>
  <g transform="rotate(-9 480 380)">
    <rect x="230" y="230" width="470" height="270" rx="42" fill="#2b2c2e"/>
    <rect x="252" y="252" width="426" height="226" rx="28" fill="#3a3b3e"/>
    <circle cx="290" cy="440" r="15" fill="#191a1b"/><circle cx="640" cy="440" r="15" fill="#191a1b"/>
    <path d="M690 330H800L850 290H905V410H850L800 372H690Z" fill="#b9b6ae"/>
    <path d="M718 328V374M738 328V374M758 328V374M778 328V374" stroke="#84817a" stroke-width="6"/>
    <rect x="290" y="285" width="350" height="120" rx="8" fill="#e9e6da"/>
    <text x="312" y="335" font-size="34" font-weight="bold" fill="#26282a">ID ${t2603Sensor}</text>
    <text x="312" y="380" font-size="26" fill="#26282a">315 MHz   LOT K7714</text>
  </g>`)

const tireInside = (): string =>
  picture(`<rect width="${wide}" height="${high}" fill="#1a1918"/>
  <path d="M-60 620C160 240 800 240 1020 620V760H-60Z" fill="url(#rubber)"/>
  <path d="M-60 500C180 130 780 130 1020 500" fill="none" stroke="#35322f" stroke-width="46"/>
  <path d="M-60 430C190 70 770 70 1020 430" fill="none" stroke="#8f9499" stroke-width="34"/>
  <g stroke="#474441" stroke-width="3">${Array.from({ length: 17 }, (_, index) => `<path d="M${70 + index * 52} 700L${180 + index * 38} 395"/>`).join('')}</g>
  <ellipse cx="480" cy="176" rx="34" ry="22" fill="#2a2b2d"/><ellipse cx="480" cy="172" rx="14" ry="9" fill="#c4c0b6"/>`)

const tireSide = (content: string): string =>
  picture(`<rect width="${wide}" height="${high}" fill="#8b8a86"/>
  <circle cx="480" cy="980" r="840" fill="url(#rubber)"/>
  <circle cx="480" cy="980" r="800" fill="none" stroke="#191817" stroke-width="14" stroke-dasharray="46 22"/>
  <circle cx="480" cy="980" r="520" fill="#9a9b9c"/><circle cx="480" cy="980" r="500" fill="#6f7173"/>
  ${content}`)

/** Letter by letter around the wheel's middle. */
const around = (text: string, radius: number, size: number, degreesApart: number): string =>
  [...text]
    .map((letter, index) => {
      const degrees = (index - (text.length - 1) / 2) * degreesApart
      return `<text x="480" y="${980 - radius}" transform="rotate(${degrees} 480 980)" text-anchor="middle" font-size="${size}" font-weight="bold" fill="#96938e">${letter}</text>`
    })
    .join('')

/** The side of a tire that carries no date: the number is whole on one side only (49 CFR 574.5). */
const sidewall = (): string =>
  tireSide(around('185/65R15 88H', 660, 62, 4.4) + around('DOT 1ZZ 4F7K BF2', 560, 44, 3.6))

const bulge = (): string =>
  tireSide(`<ellipse cx="585" cy="320" rx="135" ry="92" fill="#575552" transform="rotate(14 585 320)"/>
  <ellipse cx="555" cy="296" rx="78" ry="42" fill="#77746f" transform="rotate(14 555 296)"/>
  <path d="M505 405C570 430 650 425 705 385" fill="none" stroke="#161514" stroke-width="9"/>
  <path d="M330 250C360 262 395 268 430 262" fill="none" stroke="#a39f98" stroke-width="6"/>`)

const nail = (): string =>
  picture(`<rect width="${wide}" height="${high}" fill="#2b2a29"/>
  ${[60, 260, 480, 700].map((x) => `<rect x="${x}" y="-20" width="170" height="760" fill="url(#rubber)"/>`).join('')}
  <g stroke="#171615" stroke-width="10">${Array.from({ length: 12 }, (_, index) => `<path d="M60 ${20 + index * 62}l170 34M260 ${40 + index * 62}h180M480 ${20 + index * 62}h180M700 ${54 + index * 62}l170 -34"/>`).join('')}</g>
  <circle cx="572" cy="372" r="27" fill="#c9c5bb"/><circle cx="566" cy="366" r="15" fill="#eceae3"/>
  <path d="M545 372h54M572 345v54" stroke="#8d897f" stroke-width="5"/>
  <rect x="470" y="520" width="340" height="56" fill="#e7d9a0"/>
  ${Array.from({ length: 17 }, (_, index) => `<path d="M${480 + index * 20} 520v${index % 4 === 0 ? 34 : 18}" stroke="#3a352a" stroke-width="3"/>`).join('')}`)

const drawings = {
  'door-label': doorLabel,
  'sensor-number': sensorNumber,
  'tire-inside': tireInside,
  sidewall,
  bulge,
  nail,
}

if (process.argv[1] === import.meta.filename)
  for (const [name, draw] of Object.entries(drawings))
    writeFileSync(
      join(import.meta.dirname, `${name}.jpg`),
      await sharp(Buffer.from(draw())).jpeg({ quality: 72 }).toBuffer(),
    )
