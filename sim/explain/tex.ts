/** Numbers, units and symbols as TeX, and equations with their numbers put in. */

const THIN = '\\,';

/** Digits shown: enough to follow the working with a pocket calculator. */
const DIGITS = 5;

const grouped = (digits: string): string => digits.replace(/\B(?=(\d{3})+$)/g, THIN);

/** A number with five digits; powers of ten where plain digits would be hard to read. */
export function numberTex(value: number): string {
  if (Number.isNaN(value)) return '\\text{–}';
  if (!Number.isFinite(value)) return value > 0 ? '\\infty' : '-\\infty';
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < 1e-3 || size >= 1e7) {
    const [mantissa = '0', exponent = '0'] = value.toExponential(DIGITS - 1).split('e');
    return `${Number(mantissa)}\\times10^{${Number(exponent)}}`;
  }
  const plain = Number(value.toPrecision(DIGITS)).toString();
  const [whole = '0', decimals] = plain.split('.');
  const sign = whole.startsWith('-') ? '-' : '';
  return `${sign}${grouped(whole.replace('-', ''))}${decimals === undefined ? '' : `.${decimals}`}`;
}

const POWERS: Readonly<Record<string, string>> = { '²': '^2', '³': '^3', '⁴': '^4', '⁻': '^-', '¹': '^1' };

/** A unit such as `W/(m² K)`, upright. */
export function unitTex(unit: string): string {
  if (unit === '1' || unit === '') return '';
  const tex = unit
    .replace(/[²³⁴]/g, (power) => POWERS[power] ?? power)
    .replace(/°C/g, '^\\circ C')
    .replace(/µ|μ/g, '\\mu ')
    .replace(/%/g, '\\%')
    .replace(/ /g, THIN)
    .replace(/([A-Za-z])(?=\^\\circ)/g, '$1 ');
  return `\\mathrm{${tex}}`;
}

const GREEK = 'alpha|beta|gamma|delta|epsilon|eta|theta|lambda|mu|nu|xi|pi|rho|sigma|tau|phi|varphi';
const UNICODE_GREEK: Readonly<Record<string, string>> = {
  ρ: '\\rho',
  μ: '\\mu',
  ν: '\\nu',
  β: '\\beta',
  α: '\\alpha',
  η: '\\eta',
  λ: '\\lambda',
  σ: '\\sigma',
  φ: '\\varphi',
  ε: '\\varepsilon',
  τ: '\\tau',
};

/** Arguments of the desk reference whose equation writes them in another way than their key says. */
const WRITTEN: Readonly<Record<string, string>> = {
  dT: '\\Delta T',
  dT_e: '\\Delta T_e',
  drho: '\\Delta\\rho',
  dp: '\\Delta p',
  cp_l: 'c_{p,l}',
  voidage: '\\varepsilon',
  roughness: '\\varepsilon/D',
  emissivity: '\\varepsilon',
  m: '\\dot m',
  slope: '\\alpha',
  cut: 'd_c',
  median: 'd_{50}',
  spread: '\\sigma_g',
  layer: '(z_1-z_3)',
  phi: '\\varphi',
  'R′': "R'",
  'R″': "R''",
};

/** TeX of a symbol key such as `rho_l`, `D_i`, `h_fg`; what is TeX already stays. */
export function symbolTex(key: string): string {
  const written = WRITTEN[key];
  if (written !== undefined) return written;
  if (/[\\{/-]/.test(key)) return key;
  const [base = key, ...rest] = key.split('_');
  const head = new RegExp(`^(${GREEK})$`).test(base)
    ? `\\${base}`
    : [...base].map((letter) => UNICODE_GREEK[letter] ?? letter).join('');
  const sub = rest.join('_');
  if (sub === '') return head;
  const index = new RegExp(`^(${GREEK})$`).test(sub) ? `\\${sub}` : sub;
  return sub.length === 1 ? `${head}_${sub}` : `${head}_{${index}}`;
}

const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** One occurrence of a symbol: not part of a longer name, and not the stem of an indexed or primed one. */
const occurrence = (tex: string): string => {
  const word = /^[A-Za-z]/.test(tex);
  const before = word ? '(?<![A-Za-z_\\\\])' : '';
  const after = /[A-Za-z]$/.test(tex)
    ? /^\\[A-Za-z]+$/.test(tex) || tex.includes('\\')
      ? "(?![A-Za-z_'])"
      : "(?![_'{])"
    : "(?!')";
  return `${before}${escape(tex)}${after}`;
};

/**
 * The equation with a number in brackets in place of every symbol that is given, right of the first equals sign.
 * Upright text such as units is left alone. Symbols that the equation does not write out stand behind it.
 */
export function substituteTex(
  tex: string,
  symbols: readonly { readonly tex: string; readonly value: number }[],
): string {
  const equals = tex.indexOf('=');
  const left = equals < 0 ? '' : tex.slice(0, equals + 1);
  const right = equals < 0 ? tex : tex.slice(equals + 1);
  const known = [...symbols].sort((a, b) => b.tex.length - a.tex.length);
  if (known.length === 0) return tex;
  const values = new Map(known.map((entry) => [entry.tex, `(${numberTex(entry.value)})`]));
  const pattern = new RegExp(
    `\\\\(?:mathrm|text|operatorname)\\{[^}]*\\}|${known.map((entry) => occurrence(entry.tex)).join('|')}`,
    'g',
  );
  const used = new Set<string>();
  const put = right.replace(pattern, (found) => {
    used.add(found);
    return values.get(found) ?? found;
  });
  const rest = symbols.filter((entry) => !used.has(entry.tex)).map((entry) => `${entry.tex}=${numberTex(entry.value)}`);
  return `${left}${put}${rest.length === 0 ? '' : `\\quad(${rest.join(',\\ ')})`}`;
}
